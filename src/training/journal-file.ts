import { canonicalJson } from './canonical-json.ts'
import { type Entry, entryOf, type JournalProblem, json } from './journal.ts'

/** A journal as a `.jsonl` file: an entry a line, in canonical JSON. */
export const writeJournal = (entries: readonly Entry[]): string => entries.map((entry) => `${canonicalJson(json(entry))}\n`).join('')

/** Reads a `.jsonl` file and checks the chain. Line ends of Windows and a byte order mark do no harm; any other change is said. */
export function readJournal(text: string): { entries: Entry[] } | { problem: JournalProblem } {
  const entries: Entry[] = []
  for (const line of linesOf(text)) {
    const read = readLine(line, entries[entries.length - 1])
    if ('problem' in read) return read
    entries.push(read.entry)
  }
  return { entries }
}

/** One line with its end as the entry behind the last one. */
export function readLine(line: string, last: Entry | undefined): { entry: Entry } | { problem: JournalProblem } {
  const entry = last ? last.seq + 1 : 0
  if (!line.endsWith('\n')) return { problem: { entry, wrong: 'cut-off' } }
  const read = entryOf(parsed(line), last)
  if ('problem' in read) return parsed(line) === undefined ? { problem: { entry, wrong: 'unreadable' } } : read
  return `${canonicalJson(json(read.entry))}\n` === line ? read : { problem: { entry, wrong: 'unreadable' } }
}

function linesOf(text: string): string[] {
  const lines = text.replace(/^\uFEFF/, '').match(/[^\n]*\n|[^\n]+$/g) ?? []
  return lines.every((line) => line.endsWith('\r\n')) ? lines.map((line) => `${line.slice(0, -2)}\n`) : lines
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return undefined
  }
}

/**
 * What a journal from elsewhere adds to ours: it begins as ours does and goes on, or ours holds all of it already. At the
 * first entry that differs it diverges, and nothing of it is taken.
 */
export function addedBy(ours: readonly Entry[], theirs: readonly Entry[]): { added: Entry[] } | { problem: JournalProblem } {
  const different = theirs.findIndex(({ hash }, index) => index < ours.length && ours[index]?.hash !== hash)
  return different === -1 ? { added: theirs.slice(ours.length) } : { problem: { entry: different, wrong: 'diverges' } }
}
