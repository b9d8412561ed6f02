import type { PlainFinding } from './finding.ts'
import { findingAt, type SentenceView } from './sentence-view.ts'
import * as english from './words/english.ts'
import * as spanish from './words/spanish.ts'

/** A note tells something. What it orders is done by nobody who reads only the steps. It may send the reader to another text. */
export function commandInNote(view: SentenceView): PlainFinding | undefined {
  if (view.block.kind !== 'note') return undefined
  const allowed = view.language === 'es' ? spanish.readingOrders : english.readingOrders
  const [command] = view.commands
  const verb = command && view.words[command.verb]
  return verb && !allowed.has(verb.lower)
    ? findingAt(view, 'command-in-note', { start: verb.start, end: view.words.at(-1)?.end ?? verb.end })
    : undefined
}
