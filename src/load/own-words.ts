import { type Column, type TableName, tables } from '../model/schema/tables.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { suggestKey } from './suggest-key.ts'
import type { YamlValue } from './yaml.ts'

/** Our column name -> the word of a file -> our word for it; empty where the column then has no value. */
export type OwnWords = Readonly<Record<string, Readonly<Record<string, string>>>>

/** Whether what machine.yaml says of the words of a file can be used: columns with words of ours, and those words. */
export function checkOwnWords(table: TableName, values: OwnWords, yaml: YamlValue, sink: Sink): boolean {
  const columns: Record<string, Column> = tables[table]
  const choices = Object.keys(columns).filter((name) => typeof columns[name]?.type === 'object')
  const path = ['data', table, 'values']
  const note = 'no row of the file was checked because of this'
  let usable = true
  for (const [name, words] of Object.entries(values)) {
    const column = choices.includes(name) ? columns[name] : undefined
    if (!column || typeof column.type !== 'object') {
      const near = suggestKey(name, choices)
      sink(loadRules.unknownKey, {
        message: `\`${name}\` is no column of \`data.${table}\` that takes certain words`,
        place: yaml.placeOfKey(path, name),
        note,
        help: near ? `write \`${near}\`` : choices.length > 0 ? `columns that do: ${choices.join(', ')}` : 'take `values` out: it has no such column',
      })
      usable = false
      continue
    }
    const { oneOf } = column.type
    for (const [word, ours] of Object.entries(words)) {
      if (oneOf.includes(ours) || (ours === '' && !column.required)) continue
      sink(loadRules.wrongType, {
        message: ours === '' ? `\`${name}\` needs a value, and \`${word}\` is said to be none` : `\`${word}\` is said to be \`${ours}\``,
        place: yaml.placeOf([...path, name, word]),
        note,
        help: `write one of ${oneOf.join(', ')}`,
      })
      usable = false
    }
  }
  return usable
}
