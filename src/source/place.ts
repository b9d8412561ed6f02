/** A span in a source file. Lines and columns count from 1, columns in UTF-16 units, as editors do. */
export interface Place {
  /** Path as the author would type it from where the check was started, with forward slashes. */
  file: string
  line: number
  column: number
  /** Exclusive end. Equal to the start when only a point is known. */
  endLine: number
  endColumn: number
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

/** Orders places by file, line and column. */
export function comparePlaces(a: Place, b: Place): number {
  return compare(a.file, b.file) || a.line - b.line || a.column - b.column
}

/** The beginning of a file: where a finding stands that is about the whole of it. */
export function startOfFile(file: string): Place {
  return { file, line: 1, column: 1, endLine: 1, endColumn: 1 }
}
