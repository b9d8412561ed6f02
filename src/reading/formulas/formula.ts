/**
 * The counts a formula may ask for, each a number of things in the same text, as in `Counts`.
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

/** A formula over the average length of sentences in words and of words in syllables: `base` less what each costs. */
export const byAverages = (source: string, base: number, perSentenceLength: number, perSyllables: number) =>
  formula(
    ['words', 'sentences', 'syllables'],
    source,
    ({ words, sentences, syllables }) => base - perSentenceLength * (words / sentences) - perSyllables * (syllables / words),
  )

/** The source of three formulas that the US Navy had calculated anew. */
export const kincaid = 'Kincaid, Fishburne, Rogers, Chissom 1975, Research Branch Report 8-75 p. 14'
