import { type Located, type Place, partOf } from '../source/place.ts'

/** A field of a sheet as drawings refer to it: `/12.4:C` is sheet 12, column 4, row C. Common practice. */
export interface SheetReference {
  sheet: number
  column?: number
  row?: string
}

/** A sheet as a list names it, with its zone where it is written as a reference. */
export interface SheetCell extends Located<number> {
  /** `C4`, or `4` where only the column is given. */
  zone?: Located<string>
}

/** Reads `/12`, `/12.4` and `/12.4:C`. Undefined for any other text. */
export function readSheetReference(text: string): SheetReference | undefined {
  const [, sheet, column, row] = /^\/([1-9]\d{0,4})(?:\.([1-9]\d?)(?::([A-Z]))?)?$/.exec(text) ?? []
  if (sheet === undefined) return undefined
  return { sheet: Number(sheet), ...(column === undefined ? {} : { column: Number(column) }), ...(row === undefined ? {} : { row }) }
}

/** The same with the places of its parts in the text. */
export function locateSheet(text: string, place: Place): SheetCell | undefined {
  const read = readSheetReference(text)
  if (!read) return undefined
  const { sheet, column, row = '' } = read
  const end = column === undefined ? text.length : text.indexOf('.')
  return {
    value: sheet,
    place: partOf(place, 1, end),
    ...(column === undefined ? {} : { zone: { value: `${row}${column}`, place: partOf(place, end + 1, text.length) } }),
  }
}

/** A sheet as a reader finds it on drawings, without the slash: `12`, `12.4`, `12.4:C`. */
export function writtenSheet({ value, zone }: { value: number; zone?: { value: string } | undefined }): string {
  if (!zone) return String(value)
  const [, row = '', column = ''] = /^([A-Z]?)(.*)$/.exec(zone.value) ?? []
  return `${value}.${column}${row === '' ? '' : `:${row}`}`
}
