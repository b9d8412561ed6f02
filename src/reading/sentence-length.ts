import type { Sentence } from './block.ts'

/** Text that counts as one word, unless it is the whole sentence: what stands in parentheses, and a quoted label. */
const asOneWord = /\([^()]*\)|"[^"]*"|“[^”]*”|«[^»]*»|„[^“”]*[“”]/g

/**
 * Words of a sentence for the limits of its length: text in parentheses and quoted text are one word each.
 * Source: ASD-STE100 Issue 9, rules 8.4 to 8.7.
 */
export function sentenceLengthWords({ start, text, tokens }: Sentence): number {
  const groups = [...text.matchAll(asOneWord)]
    .map((match) => ({ start: start + match.index, end: start + match.index + match[0].length }))
    .filter((group) => tokens.some((token) => token.start < group.start || token.end > group.end))
  if (groups.length === 0) return tokens.length
  const counted = new Set<number>()
  let outside = 0
  for (const token of tokens) {
    const group = groups.findIndex((it) => token.start >= it.start && token.end <= it.end)
    if (group < 0) outside++
    else counted.add(group)
  }
  return outside + counted.size
}
