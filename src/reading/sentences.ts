import type { Block, Sentence, Span } from './block.ts'
import { endsSentence } from './ends-sentence.ts'
import { abbreviationsOf } from './language/abbreviations.ts'
import { endOfLeadMark } from './lead-mark.ts'
import { tokensOf } from './tokens.ts'

/**
 * The sentences of a block, in order. The last may lack its end mark. The place of a sentence takes in its list marker or signal word, its tokens
 * do not. What holds no word is no sentence.
 */
export function sentencesOf({ text }: Block, language: string): Sentence[] {
  return spansOf(text, language).flatMap(({ start, end }) => {
    const tokens = tokensOf(text, endOfLeadMark(text, start, end, language), end)
    return tokens.length > 0 ? [{ start, end, text: text.slice(start, end), tokens }] : []
  })
}

/** Whether a sentence has the mark that ends one; closing quotes and brackets may follow it. */
export const hasEndMark = ({ text }: Pick<Sentence, 'text'>): boolean => /[.!?…。！？]["'”’»)\]]*$/.test(text)

const candidate = /(?<![.!?])(?:[.!?]+|…)["'”’»)\]*_]*(?=\s|$)/g

function spansOf(text: string, language: string): Span[] {
  const spans: Span[] = []
  const abbreviations = abbreviationsOf(language)
  let start = firstNonSpace(text, 0)
  candidate.lastIndex = 0
  for (let match = candidate.exec(text); match; match = candidate.exec(text)) {
    const mark = { start: match.index, end: match.index + match[0].length }
    const lead = endOfLeadMark(text, start, text.length, language)
    // The dot of `1.` or of `NOTE.` belongs to the mark.
    if (mark.start < lead || !endsSentence(text, start, mark, abbreviations)) continue
    spans.push({ start, end: mark.end })
    start = firstNonSpace(text, mark.end)
  }
  const end = text.trimEnd().length
  if (start < end) spans.push({ start, end })
  return spans
}

function firstNonSpace(text: string, from: number): number {
  let at = from
  while (at < text.length && /\s/.test(text[at] as string)) at++
  return at
}
