import type { Block, Sentence, Token } from './block.ts'
import { hasEndMark, sentencesOf } from './sentences.ts'
import { type OwnWords, syllableCounter } from './syllables/syllables-of.ts'

/** What the formulas of reading level are computed of. All are numbers of things, none an average. */
export interface Counts {
  sentences: number
  words: number
  /** Words that are read as such: without numbers, measures, tags and abbreviations. */
  wordTokens: number
  /** `undefined` where the syllables of the language cannot be counted; so are the two that hang on it. */
  syllables: number | undefined
  /** Of `wordTokens`: those of one syllable, and those of three or more. */
  oneSyllable: number | undefined
  polysyllables: number | undefined
  /** Letters and digits of all words. */
  letters: number
  /** Of `wordTokens`: those of more than six letters. */
  long: number
}

/** A block without an end mark is a sentence from this number of words on. */
const fewestWordsOfSentence = 3

/** Counts of the prose in some blocks, by rule set R of DEVELOPERS.md. `own`: words with their syllables, in small letters. */
export const countsOf = (blocks: readonly Block[], language: string, own?: OwnWords): Counts => proseCounter(language, own)(blocks)

/** `countsOf` for many texts: a word that comes again is not counted anew. */
export function proseCounter(language: string, own?: OwnWords): (blocks: readonly Block[]) => Counts {
  const syllables = syllableCounter(language, own)
  return (blocks) =>
    countsOfSentences(
      blocks.flatMap((block) => proseSentences(block, language)),
      syllables,
    )
}

/** The sentences of a block that count: a label of one or two words without an end mark does not. */
export function proseSentences(block: Block, language: string): Sentence[] {
  const sentences = sentencesOf(block, language)
  const [only] = sentences
  const isLabel = sentences.length === 1 && only !== undefined && only.tokens.length < fewestWordsOfSentence && !hasEndMark(only)
  return isLabel ? [] : sentences
}

function countsOfSentences(sentences: readonly Sentence[], syllablesOfWord: ((word: string) => number) | undefined): Counts {
  const tokens = sentences.flatMap((sentence) => sentence.tokens)
  const words = tokens.filter(({ kind }) => kind === 'word')
  const perWord = syllablesOfWord && words.map(({ text }) => syllablesOfWord(text))
  return {
    sentences: sentences.length,
    words: tokens.length,
    wordTokens: words.length,
    syllables: perWord && sum(perWord) + tokens.length - words.length,
    oneSyllable: perWord?.filter((count) => count === 1).length,
    polysyllables: perWord?.filter((count) => count >= 3).length,
    letters: sum(tokens.map(lettersOf)),
    long: words.filter((word) => lettersOf(word) > 6).length,
  }
}

function lettersOf({ text }: Token): number {
  return /^[A-Za-z]+$/.test(text) ? text.length : (text.match(/[\p{L}\p{N}]/gu)?.length ?? 0)
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)
