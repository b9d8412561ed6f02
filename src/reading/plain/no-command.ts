import { commandReader } from './command.ts'
import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'

/**
 * A step that orders nothing: none of its sentences does. A question is an order to look, and a step of one or two words, such as the link
 * to a procedure, is not judged.
 */
export function noCommand(views: readonly SentenceView[]): PlainFinding | undefined {
  const first = views[0]
  if (first?.block.kind !== 'step' || first.block.continues || !commandReader(first.language)) return undefined
  const speaks = views.some(({ words }) => words.filter(({ kind }) => kind === 'word').length > 1)
  if (!speaks || views.some((view) => view.tail.includes('?') || view.commands.length > 0)) return undefined
  return findingAt(first, 'no-command', first.sentence)
}
