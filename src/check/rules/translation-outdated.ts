import type { TranslatedText } from '../../model/machine.ts'
import type { SyncedBlock } from '../../model/sync.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const translationOutdated: Rule = {
  id: 'translation-outdated',
  severity: 'warning',
  summary: 'A part of a translation is older than its source.',
  why: 'The reader of the translation follows a text that the writer has given up. The site marks it, and shows an outdated safety message in the source language.',
  source: 'house rule',

  *check({ pages, languages }) {
    for (const page of pages) for (const text of page.translations.values()) if (languages.includes(text.language)) yield* outdated(text)
  },
}

function* outdated({ sync, source }: TranslatedText): Iterable<Problem> {
  if (sync.state === 'unstamped') return
  const help = `bring it in line, then run \`fettle translated ${source.file}\``
  for (const { key, state, place, source } of sync.texts) {
    const message = {
      changed: `the source of \`${key}\` has changed`,
      added: `the source has a \`${key}\` that was not there when this was translated`,
      removed: `the source has no \`${key}\` any more`,
    }[state]
    yield { message, place, related: [{ label: 'the source', place: source }], help }
  }
  if (sync.state === 'shifted') {
    yield {
      message: `the translation has ${sync.own} blocks, and the hashes of ${sync.stamped}`,
      place: source.place(0),
      note: 'which of its blocks are older than their source was not checked',
      help: `bring its blocks in line with its source, then run \`fettle translated ${source.file}\``,
    }
    return
  }
  for (const block of sync.blocks) yield* outdatedBlock(block, source.place(0), help)
}

function* outdatedBlock(block: SyncedBlock, start: Problem['place'], help: string): Iterable<Problem> {
  if (block.state === 'changed')
    yield {
      message: 'the source of this block has changed',
      place: block.own.place,
      related: [{ label: 'it reads now', place: block.source.place }],
      help,
    }
  if (block.state === 'removed') yield { message: 'the source of this block is gone', place: block.own.place, help }
  if (block.state === 'added')
    yield {
      message: 'a block of the source is missing here',
      place: block.after ? { ...block.after.place, line: block.after.place.endLine, column: block.after.place.endColumn } : start,
      related: [{ label: 'the block', place: block.source.place }],
      help,
    }
}
