/** What the page over several machines says. */
export const startPageEn = {
  manuals: 'Manuals',
  chooseMachine: 'Which machine?',
  machineCount: '{count} machines',
  oneMachine: '1 machine',
  machineHint: 'Serial no. or model',
  languagesOf: 'Languages of {name}, {serial}',
} as const

export const startPageEs: { readonly [K in keyof typeof startPageEn]: string } = {
  manuals: 'Manuales',
  chooseMachine: '¿Qué máquina?',
  machineCount: '{count} máquinas',
  oneMachine: '1 máquina',
  machineHint: 'N.º de serie o modelo',
  languagesOf: 'Idiomas de {name}, {serial}',
}
