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
  const stem = stemAmong(known, word)
  return stem === undefined ? byRules : Math.max(1, byRules + (known.get(stem) ?? 0) - countByRules(stem))
}

const prefix = /^(?:un|re|non|over|under|pre|mis|dis|in|out|sub|super|de|inter|counter|co)(?=.{4})/
const endings = new Set('s es ed d r er ers est ing ings or ors ly able ment ments ness ion ions ive al ally ity y ism ist ists ize ized'.split(' '))
const longestEnding = 5

/** The known word that a word is a form of: the longest, without its prefix only where there is none with it. */
function stemAmong(known: ReadonlyMap<string, number>, word: string): string | undefined {
  const found = stemByEnding(known, word)
  if (found !== undefined) return found
  const rest = word.replace(prefix, '')
  if (rest === word) return undefined
  return known.has(rest) ? rest : stemByEnding(known, rest)
}

function stemByEnding(known: ReadonlyMap<string, number>, word: string): string | undefined {
  for (let cut = 1; cut <= longestEnding && word.length - cut >= 3; cut++) {
    if (!endings.has(word.slice(-cut))) continue
    const stem = word.slice(0, -cut)
    const shorter = stem.slice(0, -1)
    if (known.has(stem)) return stem
    if (known.has(`${stem}e`)) return `${stem}e`
    if (stem.endsWith('i') && known.has(`${shorter}y`)) return `${shorter}y`
    if (stem.at(-1) === stem.at(-2) && known.has(shorter)) return shorter
  }
  return undefined
}
