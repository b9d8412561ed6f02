import { sheetOf } from './cell.ts'

/**
 * A span in a source file. Lines and columns count from 1, columns in UTF-16 units, as editors do. In a workbook
 * a line is a row and a column a column.
 */
export interface Place {
  /** Path as the author would type it from where the check was started, with forward slashes. */
  file: string
  line: number
  column: number
  /** Exclusive end. Equal to the start when only a point is known. */
  endLine: number
  endColumn: number
  /** The cell in a workbook, with its sheet, as formulas name it: `Parts!C7`. Absent in a text. */
  cell?: string
}

/** A value together with where an author wrote it. */
export interface Located<T> {
  value: T
  place: Place
}

/** Code unit order: the same on every machine and locale, unlike `localeCompare`. */
export function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** Orders places by file, sheet of a workbook, line and column. */
export function comparePlaces(a: Place, b: Place): number {
  return compare(a.file, b.file) || compare(sheetOf(a), sheetOf(b)) || a.line - b.line || a.column - b.column
}

/** What stands at different places of text files, in their order; of several at one place the last. */
export function distinctByPlace<T extends { place: Place }>(all: readonly T[]): T[] {
  const byStart = new Map(all.map((it) => [`${it.place.file}:${it.place.line}:${it.place.column}`, it]))
  return [...byStart.values()].sort((a, b) => comparePlaces(a.place, b.place))
}

/** The place of a part of a value, from offset `from` to `to` in UTF-16 units. A value over lines and a cell are shown whole. */
export function partOf(place: Place, from: number, to: number): Place {
  if (place.cell !== undefined || place.line !== place.endLine) return place
  return { ...place, column: place.column + from, endColumn: place.column + to }
}

/** The beginning of a file: where a finding stands that is about the whole of it. */
export function startOfFile(file: string): Place {
  return { file, line: 1, column: 1, endLine: 1, endColumn: 1 }
}
