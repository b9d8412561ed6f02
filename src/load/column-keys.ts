import { type Column, type TableName, tables } from '../model/schema/tables.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { suggestKey } from './suggest-key.ts'
import type { YamlValue } from './yaml.ts'

/** Whether every key under `columns` of a table is one of our column names. A misspelt one would leave its column unread. */
export function checkColumnKeys(table: TableName, headings: Readonly<Record<string, string>>, yaml: YamlValue, sink: Sink): boolean {
  const columns: Record<string, Column> = tables[table]
  const unknown = Object.keys(headings).filter((key) => !isColumn(key, columns))
  for (const key of unknown) {
    const near = suggestKey(key, Object.keys(columns))
    sink(loadRules.unknownKey, {
      message: `\`${key}\` is no column of \`data.${table}\``,
      place: yaml.placeOfKey(['data', table, 'columns'], key),
      note: 'no row of the file was checked because of this',
      help: near ? `write \`${near}\`` : `the columns are ${Object.keys(columns).join(', ')}`,
    })
  }
  return unknown.length === 0
}

/** A column, or the words of one in another language: `description.es`. */
export function isColumn(name: string, columns: Readonly<Record<string, Column>>): boolean {
  if (Object.hasOwn(columns, name)) return true
  const [, own = ''] = /^(\w+)\.[a-z]{2}$/.exec(name) ?? []
  return Object.hasOwn(columns, own) && columns[own]?.type === 'words'
}
