/**
 * The signal word of a safety message, from the worst credible severity and two probabilities: of an
 * accident if the hazard is not avoided, and of death or serious injury if the accident happens.
 * Source: in the manner of ANSI Z535.6, annex C matrices, and ANSI Z535.4-2011, annex E.
 */
export function signalWord({ severity, accident, injury }: Harm): SignalWord {
  if (severity === 'property-damage') return 'notice'
  if (severity === 'minor-or-moderate-injury') return 'caution'
  return accident === 'will' && injury === 'will' ? 'danger' : 'warning'
}

export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice'
export type Severity = 'death-or-serious-injury' | 'minor-or-moderate-injury' | 'property-damage'
export type Probability = 'will' | 'could'

export interface Harm {
  severity: Severity
  accident: Probability
  injury: Probability
}

/**
 * Signal words by language. They are fixed terms and never translated freely.
 * Source: ANSI Z535.6 and ISO 3864-2 (English); Spanish from memory, as commonly printed in Europe.
 */
export const signalWords: Readonly<Record<string, Readonly<Record<SignalWord, string>>>> = {
  en: { danger: 'DANGER', warning: 'WARNING', caution: 'CAUTION', notice: 'NOTICE' },
  es: { danger: 'PELIGRO', warning: 'ADVERTENCIA', caution: 'ATENCIÓN', notice: 'AVISO' },
}
