import type { Block, Sentence } from '../block.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, viewOf } from './sentence-view.ts'

/**
 * A safety message that orders and does not say what happens otherwise. For a message in one block; one whose parts are marked up is judged by
 * its parts.
 */
export function noResult(sentences: readonly Sentence[], block: Block, language: string): PlainFinding | undefined {
  const views = sentences.map((sentence) => viewOf(sentence, block, language))
  const first = views[0]
  if (block.kind !== 'message' || !first || !views.every((view) => view.commands.length > 0)) return undefined
  return findingAt(first, 'no-result', {
    start: first.words[0]?.start ?? first.sentence.start,
    end: views.at(-1)?.sentence.end ?? first.sentence.end,
  })
}
