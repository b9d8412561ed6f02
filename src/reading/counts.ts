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
export function countsOf(blocks: readonly Block[], language: string, own?: OwnWords): Counts {
  return sentenceCounter(language, own)(blocks.flatMap((block) => countedSentences(sentencesOf(block, language))))
}

/** Those of the sentences of a block that count: a label of one or two words without an end mark does not. */
export function countedSentences(ofBlock: readonly Sentence[]): readonly Sentence[] {
  const [only] = ofBlock
  const isLabel = ofBlock.length === 1 && only !== undefined && only.tokens.length < fewestWordsOfSentence && !hasEndMark(only)
  return isLabel ? [] : ofBlock
}

/** `countsOf` for sentences that are at hand, of one text after the other: a word that comes again is not counted anew. */
export function sentenceCounter(language: string, own?: OwnWords): (sentences: readonly Sentence[]) => Counts {
  const syllablesOfWord = syllableCounter(language, own)
  return (sentences) => {
    const counts = { sentences: sentences.length, words: 0, wordTokens: 0, letters: 0, long: 0 }
    const bySyllables = { syllables: 0, oneSyllable: 0, polysyllables: 0 }
    for (const { tokens } of sentences) {
      counts.words += tokens.length
      for (const token of tokens) {
        const letters = lettersOf(token)
        counts.letters += letters
        if (token.kind !== 'word') {
          bySyllables.syllables++
          continue
        }
        counts.wordTokens++
        if (letters > 6) counts.long++
        const syllables = syllablesOfWord?.(token.text) ?? 0
        bySyllables.syllables += syllables
        if (syllables === 1) bySyllables.oneSyllable++
        if (syllables >= 3) bySyllables.polysyllables++
      }
    }
    return syllablesOfWord ? { ...counts, ...bySyllables } : { ...counts, ...notCounted }
  }
}

const notCounted = { syllables: undefined, oneSyllable: undefined, polysyllables: undefined }

function lettersOf({ text }: Token): number {
  return /^[A-Za-z]+$/.test(text) ? text.length : (text.match(/[\p{L}\p{N}]/gu)?.length ?? 0)
}
