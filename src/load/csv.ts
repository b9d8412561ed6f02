import type { Located } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { type Rows, type TableRow, trimmed } from './rows.ts'

/** A CSV file cut into cells. Cells hold their text without quotes; places cover the text between them. */
export interface Csv extends Rows {
  separator: string
}

/**
 * Cuts CSV text by RFC 4180, with the separators that spreadsheets write: comma, semicolon or tab, taken
 * from a `sep=` line or else from the first line. Lines without any text are left out.
 */
export function parseCsv(source: SourceText, sink: Sink): Csv {
  const { text } = source
  const named = /^sep=([,;\t])(\r\n|\n|\r|$)/.exec(text)
  const separator = named?.[1] ?? guessSeparator(text)
  let offset = named?.[0].length ?? 0
  const records: TableRow[] = []
  while (offset < text.length) {
    const record = readRecord(source, offset, separator, sink)
    offset = record.next
    if (record.cells.some(({ value }) => value.trim() !== ''))
      records.push({ cells: record.cells, place: source.place(record.start, record.end), sound: record.sound })
  }
  const [header, ...rest] = records
  return {
    separator,
    header: (header?.cells ?? []).map(trimmed),
    ...(header?.sound === false ? { headerIsBroken: true } : {}),
    records: rest,
    beyond: [],
    start: source.place(0),
    columnsFrom: `the columns are read from the first line, split at ${separator === '\t' ? 'tabs' : `\`${separator}\``}`,
    columnName: (index) => `column ${index + 1}`,
    surplusHelp: `put a text that holds \`${separator === '\t' ? 'a tab' : separator}\` in quotes`,
    headingHelp: 'name the columns of the file under `columns` in machine.yaml',
  }
}

/** The most frequent separator of the first line, outside quotes. */
function guessSeparator(text: string): string {
  const line = /^(?:"(?:[^"]|"")*"|[^"\r\n])*/.exec(text)?.[0].replace(/"(?:[^"]|"")*"/g, '') ?? ''
  const count = (separator: string) => line.split(separator).length - 1
  return [',', ';', '\t'].reduce((best, next) => (count(next) > count(best) ? next : best))
}

function readRecord(source: SourceText, start: number, separator: string, sink: Sink) {
  const { text } = source
  const cells: Located<string>[] = []
  let offset = start
  let sound = true
  for (;;) {
    const cell = text[offset] === '"' ? readQuoted(source, offset, separator, sink) : readBare(source, offset, separator)
    cells.push(cell.located)
    if (!cell.sound) sound = false
    offset = cell.next
    if (text[offset] !== separator) break
    offset += 1
  }
  const lineBreak = /\r\n|\n|\r/y
  lineBreak.lastIndex = offset
  return { cells, sound, start, end: offset, next: offset + (lineBreak.exec(text)?.[0].length ?? 0) }
}

function readBare(source: SourceText, start: number, separator: string) {
  const { text } = source
  let end = start
  while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end++
  return { located: { value: text.slice(start, end), place: source.place(start, end) }, sound: true, next: end }
}

function readQuoted(source: SourceText, start: number, separator: string, sink: Sink) {
  const { text } = source
  let end = start + 1
  while (end < text.length) {
    if (text[end] !== '"') end++
    else if (text[end + 1] === '"') end += 2
    else break
  }
  const located = { value: text.slice(start + 1, end).replaceAll('""', '"'), place: source.place(start + 1, end) }
  if (end >= text.length) {
    sink(loadRules.csvSyntax, {
      message: 'this quote is never closed',
      place: source.place(start, start + 1),
      note: 'everything after it was read as one cell',
      help: 'close the quote, or write a quote inside a text as two quotes',
    })
    return { located, sound: false, next: text.length }
  }
  let next = end + 1
  while (next < text.length && text[next] !== separator && text[next] !== '\n' && text[next] !== '\r') next++
  const sound = text.slice(end + 1, next).trim() === ''
  if (!sound) {
    sink(loadRules.csvSyntax, {
      message: 'text stands after a closing quote',
      place: source.place(end + 1, next),
      help: 'put the whole cell in quotes, and write a quote inside it as two quotes',
    })
  }
  return { located, sound, next }
}
