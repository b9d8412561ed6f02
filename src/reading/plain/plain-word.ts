import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView, spansOf } from './sentence-view.ts'
import { plainer } from './words/english-plainer.ts'

const pattern = new RegExp(
  String.raw`(?<![\w-])(?:${[...plainer.keys()]
    .sort((a, b) => b.length - a.length)
    .join('|')
    .replaceAll(' ', String.raw`\s+`)})(?![\w-])`,
  'gi',
)

/** The longest word of each: a sentence without any of them needs no closer look. */
const tellingWords = new Set(
  [...plainer.keys()].map((key) => key.split(' ').reduce((longest, word) => (word.length > longest.length ? word : longest))),
)

/** Words of an English sentence for which a plainer one stands in the same place. Labels in quotation marks stay as they are. */
export function plainWords(view: SentenceView): PlainFinding[] {
  if (view.language !== 'en' || !view.words.some(({ lower }) => tellingWords.has(lower))) return []
  return spansOf(view.block.text, view.sentence, pattern).flatMap((span) => {
    const words = view.block.text.slice(span.start, span.end)
    const entry = plainer.get(words.toLowerCase().replace(/\s+/g, ' '))
    const first = view.words.find(({ start, end }) => span.start >= start && span.start < end)
    if (!entry || first?.quoted || entry.unless?.test(view.sentence.text)) return []
    const suggestion = /^\p{Lu}/u.test(words) ? entry.plain.replace(/^./, (letter) => letter.toUpperCase()) : entry.plain
    return [findingAt(view, 'plain-word', span, { suggestion })]
  })
}
