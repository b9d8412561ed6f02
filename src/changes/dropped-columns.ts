import { compare } from '../source/place.ts'
import { type DataRow, type MachineRecords, type RecordTable, recordTables } from './records.ts'

/** A column that a list does not have any more. */
export interface DroppedColumn {
  table: RecordTable
  column: string
}

/**
 * Columns with values in the old revision that the list of the new one does not have: nothing says that the values
 * are gone. What a new column holds is new.
 */
export function droppedColumns(old: MachineRecords, now: MachineRecords): DroppedColumn[] {
  return recordTables.flatMap((table) => {
    if (!now.columns[table]) return []
    const left = new Set(now.columns[table])
    const filled = new Set(old.tables[table].flatMap(({ values }) => Object.keys(values)))
    return [...filled]
      .filter((column) => !left.has(column))
      .sort(compare)
      .map((column) => ({ table, column }))
  })
}

/** The records without the values of some columns. */
export function withoutColumns(records: MachineRecords, dropped: readonly DroppedColumn[]): MachineRecords {
  if (dropped.length === 0) return records
  const stripped = recordTables.map((table) => {
    const columns = new Set(dropped.filter((it) => it.table === table).map(({ column }) => column))
    return [table, columns.size === 0 ? records.tables[table] : records.tables[table].map((row) => without(row, columns))] as const
  })
  return { ...records, tables: { ...records.tables, ...Object.fromEntries(stripped) } }
}

function without(row: DataRow, columns: ReadonlySet<string>): DataRow {
  return { ...row, values: Object.fromEntries(Object.entries(row.values).filter(([column]) => !columns.has(column))) }
}
