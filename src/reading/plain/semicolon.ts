import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'

/** Semicolons between clauses. Those between values, tags or labels part a list. */
export function semicolons(view: SentenceView): PlainFinding[] {
  const { words, block, sentence } = view
  if (block.kind === 'cell' || !sentence.text.includes(';')) return []
  const at = words.flatMap(({ gap }, index) => (index > 0 && gap.includes(';') ? [index] : []))
  return at.flatMap((index, nth) => {
    const left = words.slice(at[nth - 1] ?? 0, index)
    const right = words.slice(index, at[nth + 1] ?? words.length)
    const word = words[index]
    const before = words[index - 1]
    if (!word || !before || !isProse(left) || !isProse(right)) return []
    const start = before.end + word.gap.indexOf(';')
    return [findingAt(view, 'semicolon', { start, end: start + 1 })]
  })
}

const isProse = (words: SentenceView['words']) => words.filter(({ kind, quoted }) => kind === 'word' && !quoted).length > 1
