import type { CellType } from '../model/schema/tables.ts'
import { locateSheet } from '../model/sheet-reference.ts'
import { type Located, partOf } from '../source/place.ts'
import { type DecimalSign, readNumber } from './decimal.ts'
import type { Cell } from './rows.ts'

/** The value of a cell, or what is wrong with it. */
type CellResult = { value: unknown } | { problem: string; help?: string }

/** What is wrong with a number that a spreadsheet shows in another way than it keeps it. */
export function misshown({ value, shown }: Cell, type: CellType): CellResult | undefined {
  if (shown === undefined) return undefined
  const problem = `is the number ${value}, which is shown as \`${shown}\``
  if (type === 'number' || type === 'integer' || type === 'sheet')
    return shown.endsWith('%') ? { problem, help: 'show it as a plain number, and say its unit in words' } : undefined
  return { problem, help: 'make the cell a text, and type it again as it should be read' }
}

/** Reads the text of a cell by the type of its column. */
export function readCell(cell: Located<string>, type: Exclude<CellType, 'words'>, decimal: DecimalSign): CellResult {
  const { value, place } = cell
  if (type === 'identifier') return { value: cell }
  if (type === 'list') {
    if (/[,;]/.test(value)) return { problem: `has a comma or semicolon: \`${value}\``, help: 'part the names with spaces or `|`' }
    return { value: splitList(cell) }
  }
  if (typeof type === 'object') {
    if (type.oneOf.includes(value)) return { value: cell }
    return { problem: `is \`${value}\``, help: `write one of ${type.oneOf.join(', ')}, or say under \`values\` in machine.yaml which of them it is` }
  }
  const reference = type === 'sheet' ? locateSheet(value, place) : undefined
  if (reference) return { value: reference }
  const read = readNumber(value, decimal)
  if (type === 'sheet' && !(typeof read === 'number' && Number.isInteger(read))) return sheetProblem(value)
  if (typeof read !== 'number') return read
  if (type !== 'number' && !(Number.isInteger(read) && read >= 1)) return { problem: `takes a whole number from 1, and holds \`${value}\`` }
  return { value: { value: read, place } }
}

/** Without the slash a sheet and a column are a number to a spreadsheet, which drops the zero of column 10. */
function sheetProblem(value: string): CellResult {
  const [, sheet, column, row = ''] = /^\/?0*([1-9]\d*)[.,]0*([1-9]\d?)(?:[:.]?([A-Za-z]))?$/.exec(value) ?? []
  const problem = `takes the number of a sheet or a reference like \`/12.4:C\`, and holds \`${value}\``
  if (sheet === undefined) return { problem }
  return { problem, help: `write \`/${sheet}.${column}${row === '' ? '' : `:${row.toUpperCase()}`}\` for sheet ${sheet}, column ${column}` }
}

/** Identifiers separated by spaces, `|` or line breaks, each with its own place where the cell is on one line. */
function splitList({ value, place }: Located<string>): Located<string>[] {
  return [...value.matchAll(/[^\s|]+/g)].map(({ 0: item, index }) => ({
    value: item,
    place: partOf(place, index, index + item.length),
  }))
}
