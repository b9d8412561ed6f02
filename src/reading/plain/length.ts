import type { Block, BlockKind, Sentence } from '../block.ts'
import { sentenceLengthWords } from '../sentence-length.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'

/** Words that a sentence of a block may have. Source: ASD-STE100 Issue 9, rules 5.1 (20), 6.3 and 5.5 (25). */
export const wordLimits: Readonly<Record<BlockKind, number>> = { step: 20, message: 20, paragraph: 25, 'lead-in': 25, item: 25, note: 25, cell: 25 }

/** Sentences that a paragraph may have. Source: ASD-STE100 Issue 9, rule 6.6. */
export const sentenceLimit = 6

export function longSentence({ sentence, block }: SentenceView): PlainFinding | undefined {
  const limit = wordLimits[block.kind]
  // The count of words for its length is never above the count of tokens.
  if (sentence.tokens.length <= limit) return undefined
  const is = sentenceLengthWords(sentence)
  return is > limit ? findingAt({ block }, 'long-sentence', sentence, { count: { is, limit } }) : undefined
}

/** A paragraph that is too long, from the first sentence above the limit on. The items of a list are blocks of their own. */
export function longParagraph(sentences: readonly Sentence[], block: Block): PlainFinding | undefined {
  const from = sentences[sentenceLimit]
  const last = sentences.at(-1)
  if (block.kind !== 'paragraph' || !from || !last) return undefined
  return findingAt({ block }, 'long-paragraph', { start: from.start, end: last.end }, { count: { is: sentences.length, limit: sentenceLimit } })
}
