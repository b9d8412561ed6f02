import type { TableName } from '../model/schema/tables.ts'
import { compare, type Place } from '../source/place.ts'

/** The variables of the controller are compared with the I/O list, and are no data of the machine of their own. */
export type RecordTable = Exclude<TableName, 'symbols'> | 'energy' | 'hazards' | 'checkout'

/** Every list of a machine's data, in the order in which a release holds them. */
export const recordTables: readonly RecordTable[] = [
  'devices',
  'signals',
  'cards',
  'parts',
  'drawings',
  'alarms',
  'formats',
  'energy',
  'hazards',
  'checkout',
]

/** One row as plain text: our column name -> what stands there; `description.es` for a translation. An empty cell has no entry. */
export interface DataRow {
  values: Readonly<Record<string, string>>
  /** Where its name stands; a release does not say. */
  place?: Place
  /** Columns that could not be read: the row tells what the thing is, and nothing is said of it. */
  unread?: readonly string[]
}

/** Which revision of which machine it is, as machine.yaml says. */
export interface Revision {
  id: string
  model: string
  document: string
  revision: string
  date: string
  serials: readonly string[]
  /** Options of the one unit that it is about; undefined where it is about all units of a folder. */
  fitted?: readonly string[] | undefined
}

/** The data of one revision. */
export interface MachineRecords {
  revision: Revision
  /** Rows of which a part could not be read are among them. */
  tables: Readonly<Record<RecordTable, readonly DataRow[]>>
  /** Rows that are in the lists of a folder, and fit none of the units that it is about. */
  leftOut: readonly { table: RecordTable; row: DataRow }[]
  /** Columns that each list has; a list whose columns are not known is not here. */
  columns: Readonly<Partial<Record<RecordTable, readonly string[]>>>
  /** Lists that the machine does not have. */
  unlisted: readonly RecordTable[]
  /** What could not be read: a whole list, or rows of it under names that are not known. */
  lost: readonly { table: RecordTable; extent: 'list' | 'rows'; place: Place }[]
}

/** Whether rows of a list are lost under names that are not known, in each revision. */
export interface Partly {
  old: boolean
  now: boolean
}

/** The columns in which two rows differ, in code-unit order. */
export function differing(a: DataRow, b: DataRow): string[] {
  const found: string[] = []
  for (const column in a.values) if (a.values[column] !== b.values[column]) found.push(column)
  for (const column in b.values) if (!(column in a.values)) found.push(column)
  return found.sort(compare)
}
