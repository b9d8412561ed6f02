import { columnLetters, placeOfCell, textKey } from '../../source/cell.ts'
import { type Place, startOfFile } from '../../source/place.ts'
import { loadRules, type Sink } from '../load-rules.ts'
import type { Cell, Rows, TableRow } from '../rows.ts'
import { cellText } from './cell-text.ts'
import { noteHidden } from './hidden.ts'
import { mergedParts } from './merges.ts'
import { openWorkbook, type Workbook, type Worksheet } from './open-workbook.ts'
import { type RawSheet, readWorksheet } from './read-worksheet.ts'
import { sheetText } from './sheet-text.ts'

/** Which part of a workbook machine.yaml means. */
export interface WorksheetChoice {
  sheet: string | undefined
  /** From 1. */
  headerRow: number | undefined
  /** Where machine.yaml says so, or should. */
  placeOf(key: 'file' | 'sheet' | 'headerRow'): Place
}

/** A worksheet cut into cells, and what a report shows round them. */
export interface LoadedWorksheet {
  rows: Rows
  /** Under which name the text is kept. */
  key: string
  text: string
}

/** The worksheet of a workbook that machine.yaml means, as a table. Undefined, with a finding, when there is none. */
export function loadWorksheet(bytes: Uint8Array, file: string, choice: WorksheetChoice, sink: Sink): LoadedWorksheet | undefined {
  const workbook = openWorkbook(bytes, file, sink)
  const worksheet = workbook && choose(workbook, choice, sink)
  if (!workbook || !worksheet) return undefined
  const sheet = readWorksheet(workbook, worksheet)
  if ('problem' in sheet) {
    sink(loadRules.unreadableWorkbook, {
      message: `the worksheet \`${worksheet.name}\` cannot be read: ${sheet.problem}`,
      place: startOfFile(file),
      note: 'nothing in it was checked',
      help: 'open it in a spreadsheet program and save it again, with this machine only',
    })
    return undefined
  }
  const rows = cutRows(workbook, worksheet, sheet, choice, sink)
  return rows && { rows, key: textKey(rows.start), text: sheetText(sheet, (raw) => cellText(raw, workbook, rows.start)) }
}

function choose({ worksheets }: Workbook, { sheet, placeOf }: WorksheetChoice, sink: Sink): Worksheet | undefined {
  const [only, second] = worksheets
  const found = sheet === undefined ? (second ? undefined : only) : worksheets.find(({ name }) => name === sheet)
  if (found) return found
  const names = worksheets.map(({ name, hidden }) => `\`${name}\`${hidden ? ' (hidden)' : ''}`).join(', ')
  sink(loadRules.unknownWorksheet, {
    message: sheet === undefined ? `the workbook has ${worksheets.length} worksheets` : `the workbook has no worksheet \`${sheet}\``,
    place: placeOf(sheet === undefined ? 'file' : 'sheet'),
    note: `it has ${names}; nothing in it was checked`,
    help: sheet === undefined ? 'name the one that is meant with `sheet`' : 'write its name as it stands on its tab',
  })
  return undefined
}

function cutRows(workbook: Workbook, { name, hidden }: Worksheet, sheet: RawSheet, choice: WorksheetChoice, sink: Sink): Rows | undefined {
  const place = (row: number, column: number) => placeOfCell(workbook.file, name, row, column)
  const numbers = [...sheet.rows.keys()].sort((a, b) => a - b)
  const filled = new Map(
    numbers.map((row) => [row, new Map((sheet.rows.get(row) ?? []).map((raw) => [raw.column, cellText(raw, workbook, place(row, raw.column))]))]),
  )
  const hasValue = ({ value, fault }: Cell) => fault !== undefined || value.trim() !== ''
  const headerRow = choice.headerRow ?? numbers.find((row) => [...(filled.get(row)?.values() ?? [])].some(hasValue)) ?? 1
  const headings = [...(filled.get(headerRow) ?? [])].filter(([, cell]) => hasValue(cell))
  if (headings.length === 0 && choice.headerRow !== undefined) {
    sink(loadRules.missingColumn, {
      message: `row ${headerRow} of the worksheet \`${name}\` has no headings`,
      place: choice.placeOf('headerRow'),
      help: 'give the number of the row that holds them',
    })
    return undefined
  }
  const reach = [
    ...headings.map(([column]) => column),
    ...sheet.merged.filter(({ top, bottom }) => top < headerRow && headerRow <= bottom).map(({ left }) => left),
  ]
  const width = reach.reduce((most, column) => Math.max(most, column), 0)
  const used = numbers.filter((row) => row >= headerRow)
  const merged = mergedParts(sheet.merged, used, width)
  const cellAt = (row: number, column: number): Cell => {
    const own = filled.get(row)?.get(column)
    if (own && hasValue(own)) return own
    const range = merged.get(`${row}:${column}`)
    const first = range && filled.get(range.top)?.get(range.left)
    return { value: '', place: place(row, column), ...(first && hasValue(first) ? { mergedWith: first } : {}) }
  }
  const cellsOf = (row: number) => Array.from({ length: width }, (_, index) => cellAt(row, index + 1))
  const header = cellsOf(headerRow).map(heading)
  const records = used.flatMap((row): TableRow[] => {
    const cells = cellsOf(row)
    if (row === headerRow || !cells.some(hasValue)) return []
    return [{ cells, place: { ...place(row, 1), endColumn: width + 1 }, sound: true }]
  })
  noteHidden(sheet, hidden, header, records, sink)
  return {
    header,
    records,
    beyond: firstBeyond(
      used.slice(1).map((row) => filled.get(row)),
      width,
      hasValue,
    ),
    start: place(headerRow, 1),
    columnsFrom: `the columns are read from row ${headerRow} of the worksheet \`${name}\``,
    columnName: (index) => `column ${columnLetters(index + 1)}`,
    surplusHelp: 'write its heading, or remove the column',
    headingHelp: 'say in machine.yaml what the columns are called, under `columns`, or in which row the headings stand, with `headerRow`',
  }
}

/** A heading on one line; one that is merged with cells above it stands in the first of them. */
function heading(cell: Cell): Cell {
  const above = cell.mergedWith && cell.mergedWith.place.line < cell.place.line ? cell.mergedWith.value : ''
  return { value: (cell.value || above).trim().replace(/\s+/g, ' '), place: cell.place }
}

/** The first value of each column to the right of the last heading. */
function firstBeyond(rows: readonly (ReadonlyMap<number, Cell> | undefined)[], width: number, hasValue: (cell: Cell) => boolean): Cell[] {
  const found = new Map<number, Cell>()
  for (const row of rows) for (const [column, cell] of row ?? []) if (column > width && !found.has(column) && hasValue(cell)) found.set(column, cell)
  return [...found.values()]
}
