import { exceptions } from './english-exceptions.ts'
import { countByRules } from './english-rules.ts'

/** Syllables of an English word in small letters: the exceptions and their forms first, then the rules. */
export function englishSyllables(word: string): number {
  if (/^[a-z]+$/.test(word)) return countWith(exceptions, word)
  // One more for the end of `glass's` and `didn't`, but not of `pump's` and `don't`.
  const [base = '', ending] = word.normalize('NFD').replace(/\p{M}/gu, '').replace(/æ|œ/g, 'e').split(/['’]/)
  if (ending === 't' && base.endsWith('n')) return countWith(exceptions, base.slice(0, -1)) + (/(?:[^aeiouyr]|ve)n$/.test(base) ? 1 : 0)
  return countWith(exceptions, base) + (ending === 's' && /(?:[sxz]|[cs]h|[sczg]e)$/.test(base) ? 1 : 0)
}

/** As `englishSyllables`, with exceptions of one's own. A form of an exception is as far off the rules as the exception itself. */
export function countWith(known: ReadonlyMap<string, number>, word: string): number {
  const own = known.get(word)
  if (own !== undefined) return own
  const byRules = countByRules(word)
  for (const stem of stemsOf(word)) {
    const count = known.get(stem)
    if (count !== undefined) return Math.max(1, byRules + count - countByRules(stem))
  }
  return byRules
}

const prefix = /^(?:un|re|non|over|under|pre|mis|dis|in|out|sub|super|de|inter|counter|co)(?=.{4})/

/** What a word may be a form of, the longest first. */
function* stemsOf(word: string): Generator<string> {
  yield* stemsByEnding(word)
  const rest = word.replace(prefix, '')
  if (rest === word) return
  yield rest
  yield* stemsByEnding(rest)
}

function* stemsByEnding(word: string): Generator<string> {
  if (word.endsWith('s')) yield word.slice(0, -1)
  for (let length = word.length - 1; length >= Math.max(3, word.length - 5); length--) {
    const stem = word.slice(0, length)
    if (!isEnding.test(word.slice(length))) continue
    yield stem
    yield `${stem}e`
    if (stem.endsWith('i')) yield `${stem.slice(0, -1)}y`
    if (stem.at(-1) === stem.at(-2)) yield stem.slice(0, -1)
  }
}

const isEnding = /^(?:s|es|ed|d|r|er|ers|est|ing|ings|or|ors|ly|able|ment|ments|ness|ion|ions|ive|al|ally|ity|y|ism|ist|ists|ize|ized)$/
