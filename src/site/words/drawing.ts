/** The words of plans and drawings. */
const en = {
  otherAreas: 'Areas of the machine',
  touchDevice: 'Touch a label to open its device.',
  numbersBelow: 'The numbers are those of the list.',
  elsewhere: 'In no area',
}

const es: typeof en = {
  otherAreas: 'Zonas de la máquina',
  touchDevice: 'Toque una etiqueta para abrir su dispositivo.',
  numbersBelow: 'Los números son los de la lista.',
  elsewhere: 'En ninguna zona',
}

export { en as drawingEn, es as drawingEs }
