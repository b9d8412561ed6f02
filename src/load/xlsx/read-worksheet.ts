import { cellPosition } from '../../source/cell.ts'
import { isTrue, type Workbook, type Worksheet } from './open-workbook.ts'
import { textCollector, unescaped } from './rich-text.ts'
import type { XmlHandlers } from './walk-xml.ts'

/** A cell as it is written in the sheet: the text of its value and the kind of it. */
export interface RawCell {
  column: number
  kind: 'text' | 'number' | 'boolean' | 'error' | 'date'
  /** Undefined where a formula has no result. */
  value: string | undefined
  style: number
}

/** Rows and columns from 1, both ends in the range. */
export interface Range {
  top: number
  left: number
  bottom: number
  right: number
}

export interface RawSheet {
  /** Every cell that holds something, row by row, in the order of the sheet. */
  rows: ReadonlyMap<number, readonly RawCell[]>
  merged: readonly Range[]
  hiddenRows: ReadonlySet<number>
  hiddenColumns: readonly { from: number; to: number }[]
}

/** Most cells of a sheet that are read; each takes about 100 bytes of memory. */
const mostCells = 2_000_000
const lastRow = 1_048_576
const lastColumn = 16_384

/** The cells of a worksheet, or why they cannot be read. */
export function readWorksheet({ parts, texts }: Workbook, { part }: Worksheet): RawSheet | { problem: string } {
  const rows = new Map<number, RawCell[]>()
  const merged: Range[] = []
  const hiddenRows = new Set<number>()
  const hiddenColumns: { from: number; to: number }[] = []
  let problem: string | undefined
  let count = 0
  let row = 0
  let column = 0
  let type = 'n'
  let style = 0
  let value: string | undefined
  let inValue = false
  let hasFormula = false
  const inline = textCollector('is', (text) => {
    value = text
  })

  const openers: Record<string, (attribute: (name: string) => string | undefined) => void> = {
    row(attribute) {
      const written = attribute('r')
      row = written === undefined ? row + 1 : Number(written)
      if (!Number.isInteger(row)) problem ??= `\`${written}\` stands for the number of a row`
      column = 0
      if (isTrue(attribute('hidden'))) hiddenRows.add(row)
    },
    c(attribute) {
      const address = attribute('r')
      const at = address === undefined ? { row, column: column + 1 } : cellPosition(address)
      if (at?.row !== row) problem ??= `the cell \`${address}\` stands in row ${row}`
      column = at?.column ?? 0
      type = attribute('t') ?? 'n'
      style = Number(attribute('s') ?? 0)
      value = undefined
      hasFormula = false
      count += 1
    },
    f() {
      hasFormula = true
    },
    v() {
      inValue = true
      value = ''
    },
    mergeCell(attribute) {
      const range = readRange(attribute('ref') ?? '')
      if (range) merged.push(range)
    },
    col(attribute) {
      if (isTrue(attribute('hidden'))) hiddenColumns.push({ from: Number(attribute('min')), to: Number(attribute('max')) })
    },
  }
  const endOfCell = () => {
    const kind = kinds[type] ?? 'text'
    // A formula may have a text without characters for its result; a number, a boolean or an error has characters.
    const result = value === '' && kind !== 'text' ? undefined : value
    if (!hasFormula && (result === undefined || result === '')) return
    if (!Number.isInteger(row) || row < 1 || row > lastRow || column > lastColumn) problem ??= `row ${row} column ${column} is beyond a worksheet`
    if (count > mostCells) problem ??= `the sheet has more than ${mostCells} cells`
    if (problem !== undefined) return
    const text = type === 's' ? texts[Number(result)] : type === 'str' && result !== undefined ? unescaped(result) : result
    if (type === 's' && text === undefined) {
      problem = `a cell in row ${row} names the text no. \`${result}\`, which is not in the workbook`
      return
    }
    const cells = rows.get(row) ?? []
    rows.set(row, cells)
    cells.push({ column, kind, value: text, style })
  }
  const handlers: XmlHandlers = {
    open(name, attribute) {
      openers[name]?.(attribute)
      inline.open(name, attribute)
    },
    text(text) {
      if (inValue) value = (value ?? '') + text
      inline.text(text)
    },
    close(name) {
      inline.close(name)
      if (name === 'v') inValue = false
      if (name === 'c') endOfCell()
    },
  }
  problem = parts.walk(part, handlers) ?? problem
  return problem === undefined ? { rows, merged, hiddenRows, hiddenColumns } : { problem }
}

/** What `t` says of a cell. Source: ECMA-376 part 1, 18.18.11. */
const kinds: Readonly<Record<string, RawCell['kind']>> = {
  n: 'number',
  b: 'boolean',
  e: 'error',
  d: 'date',
  s: 'text',
  str: 'text',
  inlineStr: 'text',
}

function readRange(text: string): Range | undefined {
  const [from = '', to = from] = text.split(':')
  const [first, last] = [cellPosition(from), cellPosition(to)]
  return first && last ? { top: first.row, left: first.column, bottom: last.row, right: last.column } : undefined
}
