import { type MessageForm, panelOf } from '../hazard/panel.ts'
import { inOrderOfHarm, type SignalWord } from '../hazard/signal-word.ts'

/** The colours of signal words in the form that the machine's messages have, for the style sheet of every page. */
export function wordStyles(form: MessageForm): string {
  return inOrderOfHarm.map((word) => stylesOf(word, form)).join('')
}

function stylesOf(word: SignalWord, form: MessageForm): string {
  const { ground, letters, italic, alert } = panelOf(word, form)
  const ofAlert = alert ? `;--alert-triangle:${alert.triangle};--alert-mark:${alert.mark};--alert-border:${alert.border}` : ''
  const message = `.safety-${form}.safety-${word}`
  return `${message}{--word-ground:${ground};--word-letters:${letters}${ofAlert}}${italic ? `${message} .safety-word{font-style:italic}` : ''}`
}
