/** What the page around a lesson of a package says. */
const en = {
  nobody: 'No training system answers here. What you do in this lesson is not recorded.',
  open: 'The training system records this lesson.',
  passed: 'Recorded: passed. {right} of {of} right.',
  failed: 'Not passed: {right} of {of} right. Try again, or close the lesson.',
  completed: 'Recorded: done.',
  kept: 'Nothing new is recorded. What is recorded already stays.',
  other: 'This is another lesson. It is not recorded here: open it from the list of lessons.',
  refused: 'Not recorded: {reason}',
  closed: 'The lesson is closed. You can leave this window.',
  done: 'I have finished this lesson',
  again: 'Tell it again',
  close: 'Close the lesson',
  back: 'Back to the lesson',
  practical: 'A person judges the practical part at the machine. It is not recorded here.',
} as const

export type OfficeWords = { readonly [K in keyof typeof en]: string }

const es: OfficeWords = {
  nobody: 'Aquí no responde ningún sistema de formación. Lo que haga en esta lección no se registra.',
  open: 'El sistema de formación registra esta lección.',
  passed: 'Registrado: aprobado. {right} de {of} correctas.',
  failed: 'No aprobado: {right} de {of} correctas. Inténtelo de nuevo o cierre la lección.',
  completed: 'Registrado: hecho.',
  kept: 'No se registra nada nuevo. Lo ya registrado se mantiene.',
  other: 'Esta es otra lección. Aquí no se registra: ábrala desde la lista de lecciones.',
  refused: 'No registrado: {reason}',
  closed: 'La lección está cerrada. Puede dejar esta ventana.',
  done: 'He terminado esta lección',
  again: 'Comunicarlo otra vez',
  close: 'Cerrar la lección',
  back: 'Volver a la lección',
  practical: 'Una persona juzga la parte práctica junto a la máquina. Aquí no se registra.',
}

/** Undefined where the site does not speak the language. */
export function officeWords(language: string): OfficeWords | undefined {
  return new Map<string, OfficeWords>([
    ['en', en],
    ['es', es],
  ]).get(language)
}
