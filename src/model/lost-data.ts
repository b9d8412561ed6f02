import type { Place } from '../source/place.ts'
import type { TableName } from './schema/tables.ts'

/**
 * A part of a machine's data that is there and could not be read; a finding tells why. `list`: all of it. `rows`: as
 * many as there may be, under names that are not known. `row`: one, with the cells that could be read, its name among
 * them, and the columns that could not.
 */
export type LostData = { table: TableName | 'energy' | 'hazards' | 'checkout'; place: Place } & (
  | { extent: 'list' | 'rows' }
  | { extent: 'row'; row: Readonly<Record<string, unknown>>; columns: readonly string[] }
)

/** The data of a machine as it was read: every row, whatever units it is fitted to, and what could not be read. */
export interface ReadData {
  rows: Readonly<Record<LostData['table'], readonly object[]>>
  lost: readonly LostData[]
  /** Columns of each list that is a file with a heading line; `description.es` for one in another language. */
  columns: Readonly<Partial<Record<LostData['table'], readonly string[]>>>
}
