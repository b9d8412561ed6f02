import type { Word } from './sentence-view.ts'

/** Words of a sentence from `from` up to and without `to`. */
export interface Stretch {
  from: number
  to: number
}

const startsClause = ({ gap }: Word): boolean => gap !== ' ' && /[:;–—]|\s-\s/.test(gap)
export const afterComma = (word: Word): boolean => word.gap.includes(',')

/** The parts of a sentence between colons, semicolons and dashes. */
export function stretchesOf(words: readonly Word[]): Stretch[] {
  const starts = words.flatMap((word, index) => (index === 0 || startsClause(word) ? [index] : []))
  return starts.map((from, index) => ({ from, to: starts[index + 1] ?? words.length }))
}
