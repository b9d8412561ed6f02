import type { Block, BlockKind, Sentence, Token } from '../block.ts'
import { type Command, commandReader } from './command.ts'
import type { PlainFinding, PlainKind } from './finding.ts'

/** A word of a sentence as the findings look at it. */
export interface Word extends Token {
  /** The text in lower case, with a straight apostrophe. */
  lower: string
  /** What stands between the word before, or the beginning of the sentence, and this one. */
  gap: string
  /** In quotation marks: a label that is shown as it is written somewhere else. */
  quoted: boolean
}

/** A sentence with what the findings need to know of it, found once. */
export interface SentenceView {
  sentence: Sentence
  block: Block
  /** The main language of the text, `es` of `es-MX`. */
  language: string
  /** The whole tag of the language. */
  languageTag: string
  words: readonly Word[]
  /** The orders of a step, a message or a note, in a language that is read for orders. */
  commands: readonly Command[]
  /** What follows the last word. */
  tail: string
}

/** Stands in a text for an element, a picture or code. */
const standIn = '\uFFFC'
const quotations = /"[^"]*"|“[^”]*”|«[^»]*»|„[^“”]*[“”]|‘[^’]*’(?!\p{L})/gu

/** What a block of any other kind orders is not looked for. */
const ordering = new Set<BlockKind>(['step', 'message', 'note'])

export function viewOf(sentence: Sentence, block: Block, languageTag: string): SentenceView {
  const { text } = block
  const quoted = /["“«„‘]/.test(sentence.text) ? spansOf(text, sentence, quotations) : []
  const words: Word[] = []
  let end = sentence.start
  for (const token of withStandIns(sentence)) {
    const inQuotes = quoted.length > 0 && quoted.some((span) => token.start >= span.start && token.end <= span.end)
    const lower = token.text.toLowerCase().replace('’', "'")
    words.push({ text: token.text, kind: token.kind, start: token.start, end: token.end, lower, gap: text.slice(end, token.start), quoted: inQuotes })
    end = token.end
  }
  const dash = languageTag.indexOf('-')
  const language = dash === -1 ? languageTag : languageTag.slice(0, dash)
  const commands = ordering.has(block.kind) ? (commandReader(language)?.commands(words) ?? []) : []
  return { sentence, block, language, languageTag, words, commands, tail: text.slice(end, sentence.end) }
}

/** The words of a sentence, with one for each element, picture or code that stands between them. */
function withStandIns({ text, start, tokens }: Sentence): readonly Token[] {
  if (!text.includes(standIn)) return tokens
  const between = spansOf(text, { start: 0, end: text.length }, /\uFFFC/g).map((span) => ({ start: start + span.start, end: start + span.end }))
  const apart = between.filter((span) => !tokens.some((token) => span.start >= token.start && span.end <= token.end))
  return [...tokens, ...apart.map((span) => ({ ...span, text: standIn, kind: 'identifier' as const }))].sort((a, b) => a.start - b.start)
}

/** Where a pattern stands in the sentence. */
export function spansOf(text: string, { start, end }: { start: number; end: number }, pattern: RegExp): { start: number; end: number }[] {
  return [...text.slice(start, end).matchAll(pattern)].map(({ index, 0: words }) => ({ start: start + index, end: start + index + words.length }))
}

/** A finding about the text from one offset of the block to another. */
export function findingAt(
  { block }: { block: Block },
  kind: PlainKind,
  { start, end }: { start: number; end: number },
  more: Partial<Pick<PlainFinding, 'suggestion' | 'sure' | 'count'>> = {},
): PlainFinding {
  return { kind, start, end, words: block.text.slice(start, end), sure: true, ...more }
}
