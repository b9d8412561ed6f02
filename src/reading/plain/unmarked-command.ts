import { afterComma, type Stretch } from './clauses.ts'
import { isPlural, isVerb } from './english-order.ts'
import type { Word } from './sentence-view.ts'
import { auxiliaries, clauseOpeners, determiners, objectPronouns, overPreposition, prepositions, subjectPronouns } from './words/english.ts'
import { finiteForms } from './words/english-verbs.ts'

/** The verb of an order that follows a condition without a comma: "When the motor stops open the guard." */
export function unmarkedCommand(words: readonly Word[], { from, to }: Stretch): number | undefined {
  for (let at = from + 2; at < to; at++) {
    const word = words[at]
    const before = words[at - 1]
    // "When oil and water mix the seal swells": two things are one subject.
    if (before?.lower === 'and' || (word && afterComma(word))) return undefined
    if (!word || !before || !isVerb(word) || !/^\s+$/.test(word.gap) || word.quoted) continue
    if (canLead(before) && (hasObject(words[at + 1]) || reachesObject(word, words[at + 1]))) return at
  }
  return undefined
}

/** Whether a main clause can begin behind the word: not behind a plural subject, "to" or an auxiliary. */
function canLead(before: Word): boolean {
  const { lower } = before
  if (lower === 'to' || lower === 'and' || lower === 'or' || lower === 'not' || lower === 'then') return false
  if (auxiliaries.has(lower) || determiners.has(lower) || prepositions.has(lower) || subjectPronouns.has(lower) || objectPronouns.has(lower))
    return false
  if (clauseOpeners.has(lower)) return false
  return !(isPlural(before) || lower === 'people' || lower === 'staff') || finiteForms.has(lower)
}

const reachesObject = (verb: Word, next: Word | undefined) => overPreposition.has(verb.lower) && prepositions.has(next?.lower ?? '')

const hasObject = (next: Word | undefined): boolean =>
  next !== undefined &&
  /^\s+$/.test(next.gap) &&
  (determiners.has(next.lower) || objectPronouns.has(next.lower) || next.kind === 'identifier' || /^[A-Z]+$/.test(next.text))
