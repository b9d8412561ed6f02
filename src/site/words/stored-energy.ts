/** The words of stored energy and waiting times. Spread into the labels of each language. */
export const storedEnergyEn = {
  storedEnergy: 'Stored energy',
  waitingTime: 'Waiting time',
  leftToCool: 'Left to cool by itself: {time}',
  notComputed: 'not computed; missing: {missing}',
  howComputed: 'How it is computed',
  noLaw: 'Not computed: no law gives a time for a chemical. Only the release and the proof count.',
  keepWatch: 'Until the work is done',
  scalds: 'Burns skin badly within {seconds} s, as tables of hot water say.',
  noticeSays: 'The notice on the enclosure says {time}.',
} as const

export const storedEnergyEs = {
  storedEnergy: 'Energía almacenada',
  waitingTime: 'Tiempo de espera',
  leftToCool: 'Si se deja enfriar: {time}',
  notComputed: 'no calculado; falta: {missing}',
  howComputed: 'Cómo se calcula',
  noLaw: 'No calculado: ninguna ley da un tiempo para un producto químico. Solo cuentan la descarga y la comprobación.',
  keepWatch: 'Hasta terminar el trabajo',
  scalds: 'Quema gravemente la piel en {seconds} s, según tablas de agua caliente.',
  noticeSays: 'El aviso en la envolvente dice {time}.',
} as const
