import type { Place } from './place.ts'

/** The letters of a column that counts from 1: `A`, `Z`, `AA`. */
export function columnLetters(column: number): string {
  const letters: string[] = []
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) letters.unshift(String.fromCharCode(65 + ((rest - 1) % 26)))
  return letters.join('')
}

/** Column and row from 1 of a cell address without its sheet: `C7`, `$C$7`; undefined when it is none. */
export function cellPosition(address: string): { row: number; column: number } | undefined {
  const [, letters, digits] = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/.exec(address) ?? []
  if (letters === undefined || digits === undefined) return undefined
  return { row: Number(digits), column: [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) }
}

/** Where a cell of a workbook stands: the line is its row, the column its column. */
export function placeOfCell(file: string, sheet: string, row: number, column: number): Place {
  return { file, line: row, column, endLine: row, endColumn: column + 1, cell: `${sheetName(sheet)}!${columnLetters(column)}${row}` }
}

/** A sheet as formulas name it: in quotes where it is more than one word. */
function sheetName(sheet: string): string {
  return /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`
}

/** The sheet of a place in a workbook, as formulas name it; empty for a place in a text. */
export function sheetOf({ cell = '' }: Place): string {
  return cell.slice(0, Math.max(0, cell.lastIndexOf('!')))
}

/** Under which name the text round a place is kept: its file, or its file and sheet. */
export function textKey(place: Place): string {
  return place.cell === undefined ? place.file : `${place.file}!${sheetOf(place)}`
}
