import { type DataRow, type MachineRecords, type RecordTable, recordTables } from './records.ts'

/** Where a release keeps its data. */
export const dataName = 'data.json'

/** The data of a release: what `fettle changes` compares a later revision with. Without places: the files are not part of a release. */
export function dataText({ revision, tables }: MachineRecords): string {
  const rows = Object.fromEntries(recordTables.map((table) => [table, tables[table].map(({ values }) => values)]))
  return `${JSON.stringify({ form: 1, revision, ...rows }, null, 1)}\n`
}

/** Reads `data.json` of a release; undefined when it is none of ours. */
export function readData(text: string): MachineRecords | undefined {
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch {
    return undefined
  }
  if (typeof data !== 'object' || data === null || !('form' in data) || data.form !== 1 || !('revision' in data)) return undefined
  const lists = new Map(Object.entries(data).map(([name, rows]) => [name, rowsOf(rows)]))
  const rows = (table: RecordTable) => lists.get(table) ?? []
  const { revision } = data as { revision: MachineRecords['revision'] }
  return {
    revision,
    tables: {
      devices: rows('devices'),
      signals: rows('signals'),
      cards: rows('cards'),
      parts: rows('parts'),
      drawings: rows('drawings'),
      alarms: rows('alarms'),
      formats: rows('formats'),
      energy: rows('energy'),
    },
    unread: recordTables.filter((table) => !lists.get(table)),
    broken: [],
  }
}

/** Undefined where a list is not one of rows with texts. */
function rowsOf(list: unknown): DataRow[] | undefined {
  if (!Array.isArray(list)) return undefined
  const isRow = (row: unknown) => typeof row === 'object' && row !== null && Object.values(row).every((value) => typeof value === 'string')
  return list.every(isRow) ? list.map((values) => ({ values })) : undefined
}
