/** The words of plans and drawings. */
const en = {
  otherAreas: 'Areas of the machine',
  touchDevice: 'Touch a label to open its device.',
  numbersBelow: 'The numbers are those of the list.',
  elsewhere: 'In no area',
  zoomFitPlan: 'Whole area',
  searchDrawing: 'Search drawing',
  searchDrawingHint: 'Tag or word on this drawing',
  findCount: '{at} of {count}',
  findSome: '{count} found',
  findNothing: 'It stands on no sheet of this drawing.',
  findFailed: 'The texts of this drawing could not be loaded.',
  findNext: 'Next',
  findPrevious: 'Previous',
  findClose: 'End search',
  findOnSheet: 'Sheet {sheet}: {count}',
}

const es: typeof en = {
  otherAreas: 'Zonas de la máquina',
  touchDevice: 'Toque una etiqueta para abrir su dispositivo.',
  numbersBelow: 'Los números son los de la lista.',
  elsewhere: 'En ninguna zona',
  zoomFitPlan: 'Toda la zona',
  searchDrawing: 'Buscar en el plano',
  searchDrawingHint: 'Etiqueta o palabra de este plano',
  findCount: '{at} de {count}',
  findSome: '{count} encontrados',
  findNothing: 'No está en ninguna hoja de este plano.',
  findFailed: 'No se han podido cargar los textos de este plano.',
  findNext: 'Siguiente',
  findPrevious: 'Anterior',
  findClose: 'Terminar la búsqueda',
  findOnSheet: 'Hoja {sheet}: {count}',
}

export { en as drawingEn, es as drawingEs }
