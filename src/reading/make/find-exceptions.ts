import { countWith } from '../syllables/english.ts'

/** Words with all their accepted numbers of syllables, the first pronunciation first. */
export type Gold = ReadonlyMap<string, readonly number[]>

/** Families in which every word has two pronunciations: either count will do (`handling`, `automatically`). */
const either = /[^aeiou]l(?:ing|er)s?$|ically$/
/** Of `wire`, `require` and `hour` the shorter is taken. */
const shorter = /[iy]r(?:e|ing|ed|er)|our/

function wanted(word: string, accepted: readonly number[]): readonly number[] {
  if (either.test(word)) return accepted
  return shorter.test(word) ? [Math.min(...accepted)] : accepted.slice(0, 1)
}

/** Few exceptions that make every word of `gold` right: short words first, so that their forms follow them. Words without a vowel are left out. */
export function findExceptions(gold: Gold): Map<string, number> {
  const words = [...gold].filter(([word]) => /[aeiouy]/.test(word)).sort(([a], [b]) => a.length - b.length || (a < b ? -1 : 1))
  const wantedOf = new Map(words.map(([word, accepted]) => [word, wanted(word, accepted)]))
  const found = new Map<string, number>()
  for (const [word, counts] of wantedOf) {
    const [count] = counts
    if (count !== undefined && !counts.includes(countWith(found, word))) found.set(word, count)
  }
  // An exception that its own stem makes right by now is none.
  for (const [word, count] of [...found].reverse()) {
    found.delete(word)
    if (!wantedOf.get(word)?.includes(countWith(found, word))) found.set(word, count)
  }
  return found
}
