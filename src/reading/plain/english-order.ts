import type { Word } from './sentence-view.ts'
import {
  actNouns,
  auxiliaries,
  clauseOpeners,
  determiners,
  objectPronouns,
  otherFunctionWords,
  particles,
  prepositions,
  subjectPronouns,
  subordinators,
} from './words/english.ts'
import { finiteForms, nounVerbs, pureVerbs } from './words/english-verbs.ts'

/** A verb with another prefix: "reseal", "unclamp", "overfill". */
const prefixed = /^(?:re|un|over|pre|dis|de)-?([a-z]{3,})$/

/** Whether the word is a verb that can order, and whether it can be a noun or an adjective too. */
function verbClass(lower: string): 'verb' | 'noun too' | undefined {
  if (nounVerbs.has(lower)) return 'noun too'
  if (pureVerbs.has(lower)) return 'verb'
  const stem = prefixed.exec(lower)?.[1]
  return stem !== undefined && (nounVerbs.has(stem) || pureVerbs.has(stem)) ? 'noun too' : undefined
}

/** Whether the word can be nothing but a verb. */
export const isOnlyVerb = (word: Word | undefined): boolean => word?.kind === 'word' && verbClass(word.lower) === 'verb'

export const isVerb = (word: Word | undefined): boolean => word?.kind === 'word' && verbClass(word.lower) !== undefined

/** Whether the English word at `at` orders something, if an order can begin there: "drain the tank" and not "drain valves are". */
export function orders(words: readonly Word[], at: number): boolean {
  const word = words[at]
  if (word?.kind !== 'word' || word.quoted) return false
  // "Have the boiler inspected"; "have" is no order otherwise.
  if (word.lower === 'have') return takesObject(words[at + 1])
  if (word.lower === 'back') return particles.has(words[at + 1]?.lower ?? '')
  const verb = verbClass(word.lower)
  if (verb !== undefined) return verb === 'verb' || !isNoun(words, at)
  // A word that is in no list orders something where an article follows: "Degauss the coil."
  return articles.has(words[at + 1]?.lower ?? '') && takesObject(words[at + 1]) && isBaseForm(word.lower)
}

const articles = new Set(['the', 'a', 'an', 'your', 'each', 'all', 'both'])

/** Whether what follows a verb can only be its object. */
export function takesObject(next: Word | undefined): boolean {
  return next !== undefined && /^\s+$/.test(next.gap) && (objectPronouns.has(next.lower) || articles.has(next.lower))
}

function isBaseForm(lower: string): boolean {
  const closed = [determiners, objectPronouns, subjectPronouns, prepositions, subordinators, clauseOpeners, auxiliaries, otherFunctionWords]
  return /^[a-z-]+(?:[^s]|ss)$/.test(lower) && !/(ing|ed|ly)$/.test(lower) && !closed.some((set) => set.has(lower))
}

/** What else a word such as "drain" can be is told by what follows it. */
function isNoun(words: readonly Word[], at: number): boolean {
  const next = words[at + 1]
  if (!next || /[,:(]/.test(next.gap)) return false
  if (determiners.has(next.lower) || objectPronouns.has(next.lower)) return false
  if (next.lower === 'of' || auxiliaries.has(next.lower)) return true
  const third = words[at + 2]
  if (isPlural(next) && third && /^\s+$/.test(third.gap) && isVerb(third) && !prepositions.has(third.lower)) return true
  if (namesAct(words, at) && !leavesOutThat.has(words[at]?.lower ?? '')) return true
  // "Check valve V12 is open" leaves out "that".
  if (leavesOutThat.has(words[at]?.lower ?? '') && !isPlural(next) && !prepositions.has(next.lower)) return false
  return hasFinite(words, at + 1)
}

const leavesOutThat = new Set(['check', 'see', 'test', 'note'])

/** "Oil level check": nothing but nouns, and the last one names an act. */
function namesAct(words: readonly Word[], at: number): boolean {
  const last = words.at(-1)
  if (!last || words.length < at + 3 || !actNouns.has(last.lower)) return false
  return words
    .slice(at + 1)
    .every(({ kind, lower, gap }) => kind === 'word' && /^\s+$/.test(gap) && !determiners.has(lower) && !prepositions.has(lower))
}

export const isPlural = (word: Word): boolean => word.kind === 'word' && /[^s'u]s$/.test(word.lower)

/** A finite verb of the same clause. */
function hasFinite(words: readonly Word[], from: number): boolean {
  for (let at = from; at < words.length; at++) {
    const word = words[at]
    if (!word || /[,:;(–—]/.test(word.gap) || clauseOpeners.has(word.lower) || word.lower === 'to') return false
    if (at > from && word.kind === 'word' && finiteForms.has(word.lower)) return true
  }
  return false
}
