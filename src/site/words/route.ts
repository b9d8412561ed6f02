/** The words of a route card: what takes a reader from step to step. */
const en = {
  stepDone: 'Done, next step',
  stepDoneLast: 'Done, last step',
  stepBack: 'Back one step',
  stepTo: 'To step {step}',
  stepsAllDone: 'All steps are ticked.',
  stepsClear: 'Clear the ticks',
}

const es: typeof en = {
  stepDone: 'Hecho, paso siguiente',
  stepDoneLast: 'Hecho, último paso',
  stepBack: 'Un paso atrás',
  stepTo: 'Al paso {step}',
  stepsAllDone: 'Todos los pasos están marcados.',
  stepsClear: 'Quitar las marcas',
}

export { en as routeEn, es as routeEs }
