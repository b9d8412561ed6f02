import { afterComma, type Stretch } from './clauses.ts'
import { isPlural, isVerb } from './english-order.ts'
import type { Word } from './sentence-view.ts'
import { auxiliaries, clauseOpeners, determiners, objectPronouns, overPreposition, prepositions } from './words/english.ts'
import { finiteForms } from './words/english-verbs.ts'

/** The verb of an order that follows a condition without a comma: "When the motor stops open the guard." */
export function unmarkedCommand(words: readonly Word[], { from, to }: Stretch): number | undefined {
  for (let at = from + 2; at < to; at++) {
    const word = words[at]
    const before = words[at - 1]
    // "When oil and water mix the seal swells": two things are one subject.
    if (before?.lower === 'and' || (word && afterComma(word))) return undefined
    if (!word || !before || !isVerb(word) || !/^\s+$/.test(word.gap) || word.quoted) continue
    if (canLead(before, words[at - 2]) && (hasObject(words[at + 1]) || reachesObject(word, words[at + 1]))) return at
  }
  return undefined
}

/** Subjects in the plural: a verb behind them is theirs. Behind "it" and "nothing" a verb without -s is an order. */
const plurals = new Set(['i', 'you', 'we', 'they', 'who', 'which', 'that', 'there', 'these', 'people', 'staff'])
/** "Let it drive the belt": what follows is no order. */
const causatives = new Set(['let', 'make', 'see', 'watch', 'help', 'have'])

/** Whether a main clause can begin behind the word: not behind a plural subject, "to" or an auxiliary. */
function canLead(before: Word, earlier: Word | undefined): boolean {
  const { lower } = before
  if (['to', 'or', 'not', 'then'].includes(lower) || plurals.has(lower) || causatives.has(earlier?.lower ?? '')) return false
  if (auxiliaries.has(lower) || determiners.has(lower) || prepositions.has(lower) || clauseOpeners.has(lower)) return false
  return !isPlural(before) || finiteForms.has(lower)
}

const reachesObject = (verb: Word, next: Word | undefined) => overPreposition.has(verb.lower) && prepositions.has(next?.lower ?? '')

const hasObject = (next: Word | undefined): boolean =>
  next !== undefined &&
  /^\s+$/.test(next.gap) &&
  (determiners.has(next.lower) || objectPronouns.has(next.lower) || next.kind === 'identifier' || /^[A-Z]+$/.test(next.text))
