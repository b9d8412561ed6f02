import type { LostData } from '../model/lost-data.ts'
import type { WordsInput } from '../model/schema/common.ts'
import { type Column, nameColumns, type Row, type TableName, tables } from '../model/schema/tables.ts'
import { saysSpare } from '../model/spare.ts'
import type { Words } from '../model/words.ts'
import type { Located, Place } from '../source/place.ts'
import { isColumn } from './column-keys.ts'
import type { DecimalSign } from './decimal.ts'
import { reportExchangedLanguages } from './exchanged-languages.ts'
import { loadRules, type Sink } from './load-rules.ts'
import type { OwnWords } from './own-words.ts'
import { misshown, readCell } from './read-cell.ts'
import { type Cell, type Rows, trimmed } from './rows.ts'
import { isWhole } from './whole-row.ts'

export interface TableOptions {
  /** Our column name -> heading in the file. */
  headings: Readonly<Record<string, string>>
  sourceLanguage: string
  /** Decimal sign of the numbers; without it the point. */
  decimal?: DecimalSign | undefined
  /** Words of the file for ours. */
  values?: OwnWords | undefined
}

/** Rows of a table, and the rows whose own faults keep them out: their key and place. */
export interface TableRows<T extends TableName> {
  rows: Row<T>[]
  broken: Located<string>[]
  /** False when the file could not be read as this table, or not the names of all its rows. */
  readable: boolean
  /** What of it could not be read. */
  lost: LostData[]
  /** Our names of the columns that the file has, those of other languages among them. */
  columns: readonly string[]
}

const names: Record<TableName, string> = {
  devices: 'device list',
  signals: 'I/O list',
  cards: 'list of cards',
  parts: 'bill of materials',
  drawings: 'drawing register',
  alarms: 'alarm list',
  formats: 'list of formats',
  symbols: 'variable list',
}

export function loadTable<T extends TableName>(table: T, file: Rows, options: TableOptions, sink: Sink): TableRows<T> {
  const columns: Record<string, Column> = tables[table]
  if (file.header.length === 0) {
    sink(loadRules.missingColumn, {
      message: `the ${names[table]} is empty`,
      place: file.start,
      help: 'export it again, with its heading line, or take it out of machine.yaml',
    })
    return unreadTable(table, file.start)
  }
  // A finding tells of it already.
  if (file.headerIsBroken) return unreadTable(table, file.header[0]?.place ?? file.start)
  const { positions, complete } = matchHeader(table, file, options, sink)
  if (!complete) return unreadTable(table, file.header[0]?.place ?? file.start)
  reportExchangedLanguages(file, positions, options.sourceLanguage, sink)
  const rows: Row<T>[] = []
  const broken: Located<string>[] = []
  const lost: LostData[] = []
  const [keyColumn] = Object.keys(columns)
  const reported = new Set<string>()
  let keysKnown = true
  for (const { cells, place, sound: cut } of file.records) {
    const row: Record<string, unknown> = { place }
    // Cells that were cut at the wrong place say nothing about their columns.
    const cutRight = cut && fitsHeader(cells, file, sink)
    const whole = cutRight && isWhole(cells, positions, columns, reported, sink)
    const unread: string[] = []
    for (const [name, column] of cutRight ? Object.entries(columns) : []) {
      // Of a row that is reported already, the cells that have a value are read without a further finding.
      const read =
        whole || hasOwnValue(cells[positions.get(name) ?? -1])
          ? readColumn(name, column, cells, positions, options, place, whole ? sink : () => {})
          : { value: undefined, sound: false }
      if (read.sound) row[name] = read.value
      else unread.push(name)
    }
    const key = keyColumn === undefined ? undefined : cells[positions.get(keyColumn) ?? -1]
    // The cells were read by the very columns that define the type of the row.
    if (whole && unread.length === 0) {
      rows.push(row as Row<T>)
      continue
    }
    if (key?.fault) keysKnown = false
    else if (key) broken.push(trimmed(key))
    const named = cutRight && nameColumns(table).every((name) => !unread.includes(name))
    lost.push(named ? { extent: 'row', table, place: key?.place ?? place, row, columns: unread } : { extent: 'rows', table, place })
  }
  return { rows, broken, readable: keysKnown, lost, columns: [...positions.keys()] }
}

const hasOwnValue = (cell: Cell | undefined) => !cell?.fault && !cell?.mergedWith

/** A table of which nothing could be read. */
export function unreadTable<T extends TableName>(table: T, place: Place): TableRows<T> {
  return { rows: [], broken: [], readable: false, lost: [{ extent: 'list', table, place }], columns: [] }
}

/** Whether a row has no more cells than the heading line. */
function fitsHeader(cells: readonly Cell[], file: Rows, sink: Sink): boolean {
  const surplus = cells.slice(file.header.length)
  const [first] = surplus
  if (!first || surplus.every(({ value }) => value.trim() === '')) return true
  sink(loadRules.extraCells, {
    message: `the row has ${cells.length} cells, and the heading line ${file.header.length}`,
    place: first.place,
    help: file.surplusHelp,
  })
  return false
}

function matchHeader(table: TableName, file: Rows, { headings }: TableOptions, sink: Sink) {
  const columns: Record<string, Column> = tables[table]
  const positions = new Map<string, number>()
  const used = new Set<number>()
  const wanted = [...Object.keys(columns), ...Object.keys(headings).filter((name) => name.includes('.'))]
  for (const [index, { value }] of file.header.entries()) {
    // One column may serve as two: a kind that decides the technology.
    const asked = wanted.filter((it) => (headings[it] ?? it) === value)
    const names = asked.length === 0 && value.includes('.') && isColumn(value, columns) ? [value] : asked
    if (names.length === 0) continue
    used.add(index)
    const first = names.map((name) => positions.get(name)).find((it) => it !== undefined)
    if (first === undefined) {
      for (const name of names) positions.set(name, index)
      continue
    }
    sink(loadRules.duplicateColumn, {
      message: `the column \`${value}\` is there twice`,
      place: file.header[index]?.place ?? file.start,
      related: [{ label: 'first column', place: file.header[first]?.place ?? file.start }],
      help: 'rename one of them, so that it is certain which one is read',
    })
  }
  const note = `${file.columnsFrom}: ${file.header.map(({ value }) => value).join(', ')}`
  const strange = [...file.header.entries()].filter(([index, { value }]) => !used.has(index) && value !== '')
  const missing = wanted.filter((name) => !positions.has(name) && (columns[name]?.required || headings[name] !== undefined))
  const complete = missing.length === 0
  if (!complete) {
    const lacking = missing.map((name) => headings[name] ?? name)
    const [only] = lacking
    const near = lacking.length === 1 ? strange.find(([, { value }]) => alike(value, only ?? ''))?.[1] : undefined
    sink(loadRules.missingColumn, {
      message: `the ${names[table]} has no column ${lacking.map((heading) => `\`${heading}\``).join(', ')}`,
      place: near?.place ?? file.header[0]?.place ?? file.start,
      note,
      help: `${near ? `rename \`${near.value}\` to \`${only}\`` : `add what is missing, or ${file.headingHelp}`}; the ${file.records.length} rows were not checked because of this`,
    })
  }
  if (complete) {
    for (const [, { value, place }] of strange) {
      sink(loadRules.unknownColumn, {
        message: `the column \`${value}\` is not read`,
        place,
        help: 'name it under `columns` in machine.yaml if one of our columns is meant',
      })
    }
    for (const [index, { value, place }] of file.header.entries()) {
      // Spreadsheets export empty columns at the end; one with text in it has lost its heading.
      const first = value === '' ? file.records.find(({ cells }) => (cells[index]?.value ?? '').trim() !== '') : undefined
      if (!first) continue
      sink(loadRules.unknownColumn, {
        message: `${file.columnName(index)} has no heading and is not read`,
        place,
        related: [{ label: 'it holds text here', place: first.cells[index]?.place ?? first.place }],
        help: 'write its heading, or remove the column',
      })
    }
    for (const { place } of file.beyond) {
      sink(loadRules.unknownColumn, {
        message: `${file.columnName(place.column - 1)} has no heading and is not read`,
        place,
        help: 'write its heading, or remove the column',
      })
    }
  }
  return { positions, complete }
}

const alike = (a: string, b: string) => {
  const letters = (text: string) => [...text.toLowerCase().replace(/[^a-z]/g, '')].sort().join('')
  const [one, two] = [letters(a), letters(b)]
  return one === two || (Math.abs(one.length - two.length) === 1 && (one.length > two.length ? holds(one, two) : holds(two, one)))
}
/** Whether `long` holds every letter of `short`, both sorted. */
const holds = (long: string, short: string) => {
  let at = 0
  for (const letter of long) if (letter === short[at]) at++
  return at === short.length
}

function readColumn(
  name: string,
  column: Column,
  cells: readonly Cell[],
  positions: ReadonlyMap<string, number>,
  { sourceLanguage, decimal = 'point', values = {} }: TableOptions,
  row: Place,
  sink: Sink,
): { value: unknown; sound: boolean } {
  const at = (column: string) => {
    const index = positions.get(column)
    const cell = index === undefined ? undefined : cells[index]
    return cell && cell.value.trim() !== '' ? trimmed(cell) : undefined
  }
  const written = at(name)
  const ours = written && ourWord(values[name], written.value)
  const cell = written && ours !== undefined ? (ours === '' ? undefined : { ...written, value: ours }) : written
  if (!cell) {
    const marksSpare = column.emptyIfSpare?.every((other) => saysSpare(at(other)?.value ?? '-'))
    if (marksSpare) return { value: { value: '', place: cells[positions.get(name) ?? 0]?.place ?? row }, sound: true }
    if (column.required) {
      const index = positions.get(name) ?? 0
      sink(loadRules.missingValue, { message: `the row has no \`${name}\``, place: cells[index]?.place ?? row })
    }
    return { value: column.type === 'list' ? [] : undefined, sound: !column.required }
  }
  const result =
    misshown(cell, column.type) ??
    (column.type === 'words' ? { value: wordsOf(name, cell, at, positions, sourceLanguage) } : readCell(cell, column.type, decimal))
  if ('value' in result) return { value: result.value, sound: true }
  sink(loadRules.wrongType, { message: `\`${name}\` ${result.problem}`, place: cell.place, ...(result.help ? { help: result.help } : {}) })
  return { value: undefined, sound: false }
}

const ourWord = (words: OwnWords[string] | undefined, written: string) => (words && Object.hasOwn(words, written) ? words[written] : undefined)

function wordsOf(
  name: string,
  cell: Located<string>,
  at: (column: string) => Located<string> | undefined,
  positions: ReadonlyMap<string, number>,
  sourceLanguage: string,
): Words {
  const words: Record<string, Located<string>> = { [sourceLanguage]: cell }
  for (const column of positions.keys()) {
    const language = column.startsWith(`${name}.`) ? column.slice(name.length + 1) : undefined
    const text = language ? at(column) : undefined
    if (language && text) words[language] = text
  }
  return words
}

/** Text given once, or by language, as words with places. */
export function wordsFrom(input: WordsInput, place: (language?: string) => Place, sourceLanguage: string): Words {
  if (typeof input === 'string') return { [sourceLanguage]: { value: input, place: place() } }
  return Object.fromEntries(Object.entries(input).map(([language, value]) => [language, { value, place: place(language) }]))
}
