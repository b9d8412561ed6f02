/**
 * The counts a formula may ask for, each a number of things in the same text: `strokes` are letters and digits, `hard` the words of three or
 * more syllables.
 */
export interface FormulaCounts {
  words: number
  sentences: number
  syllables: number
  letters: number
  oneSyllable: number
  polysyllables: number
  long: number
  wordTokens: number
  /** Words that are not on the word list of Dale and Chall, which is not ours to give. */
  unfamiliar: number
}

export type CountName = keyof FormulaCounts

/** A formula with the counts that it asks for. Its value is finite as long as words, sentences and wordTokens are above 0. */
export interface Formula<K extends CountName = CountName> {
  needs: readonly K[]
  /** Author, year, document. */
  source: string
  value(counts: Pick<FormulaCounts, K>): number
}

export const formula = <K extends CountName>(needs: readonly K[], source: string, value: (counts: Pick<FormulaCounts, K>) => number): Formula<K> => ({
  needs,
  source,
  value,
})
