/** The words of a route card: what takes a reader from step to step, and how likely a cause is. */
const en = {
  stepDone: 'Done, next step',
  stepDoneLast: 'Done, last step',
  stepBack: 'Back one step',
  stepTo: 'To step {step}',
  stepsAllDone: 'All steps are ticked.',
  stepsClear: 'Clear the ticks',
  likelihood_usual: 'Most often',
  likelihood_often: 'Often',
  likelihood_sometimes: 'Sometimes',
  likelihood_rare: 'Seldom',
}

const es: typeof en = {
  stepDone: 'Hecho, paso siguiente',
  stepDoneLast: 'Hecho, último paso',
  stepBack: 'Un paso atrás',
  stepTo: 'Al paso {step}',
  stepsAllDone: 'Todos los pasos están marcados.',
  stepsClear: 'Quitar las marcas',
  likelihood_usual: 'Lo más frecuente',
  likelihood_often: 'Frecuente',
  likelihood_sometimes: 'A veces',
  likelihood_rare: 'Rara vez',
}

export { en as routeEn, es as routeEs }
