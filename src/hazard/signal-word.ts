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

/** The signal words, the one for the greatest harm first: the order of a group of messages. Common practice. */
export const inOrderOfHarm = ['danger', 'warning', 'caution', 'notice'] as const

export type SignalWord = (typeof inOrderOfHarm)[number]
export type Severity = 'death-or-serious-injury' | 'minor-or-moderate-injury' | 'property-damage'
export type Probability = 'will' | 'could'

/** The probabilities count for death or serious injury alone; elsewhere `could` stands for them. */
export interface Harm {
  severity: Severity
  accident: Probability
  injury: Probability
}

/** Below 0 where `a` comes before `b` in a group: DANGER, WARNING, CAUTION, NOTICE. */
export function compareWords(a: SignalWord, b: SignalWord): number {
  return inOrderOfHarm.indexOf(a) - inOrderOfHarm.indexOf(b)
}

/** One message has one word: that of its greatest harm. Undefined where there is no harm, and so no message. Source: ANSI Z535.6, annex C. */
export function greatestWord(harms: readonly Harm[]): SignalWord | undefined {
  return harms.map(signalWord).toSorted(compareWords)[0]
}

/** The verb that the consequence of a message takes. Source: ANSI Z535.6, clause 4, definitions of the words. */
export function consequenceVerb(word: SignalWord): Probability {
  return word === 'danger' ? 'will' : 'could'
}

/** Whether a word speaks of injury. Only then does the alert symbol stand beside it. Source: ANSI Z535.6, clause 4. */
export function warnsOfInjury(word: SignalWord): boolean {
  return word !== 'notice'
}
