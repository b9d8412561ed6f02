import type { TableName } from '../model/schema/tables.ts'
import { compare, type Place } from '../source/place.ts'

/** The variables of the controller are compared with the I/O list, and are no data of the machine of their own. */
export type RecordTable = Exclude<TableName, 'symbols'> | 'energy'

/** Every list of a machine's data, in the order in which a release holds them. */
export const recordTables: readonly RecordTable[] = ['devices', 'signals', 'cards', 'parts', 'drawings', 'alarms', 'formats', 'energy']

/** One row as plain text: our column name -> what stands there; `description.es` for a translation. An empty cell has no entry. */
export interface DataRow {
  values: Readonly<Record<string, string>>
  /** Where its name stands; a release does not say. */
  place?: Place
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
  tables: Readonly<Record<RecordTable, readonly DataRow[]>>
  /** Lists that could not be read: nothing is said of them. */
  unread: readonly RecordTable[]
  /** Names of rows that could not be read: nothing is said of them. */
  broken: readonly { table: RecordTable; id: string; place: Place }[]
}

/** The columns in which two rows differ, in code-unit order. */
export function differing(a: DataRow, b: DataRow): string[] {
  const found: string[] = []
  for (const column in a.values) if (a.values[column] !== b.values[column]) found.push(column)
  for (const column in b.values) if (!(column in a.values)) found.push(column)
  return found.sort(compare)
}
