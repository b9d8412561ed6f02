import { adjusterOf } from '../../model/changeover.ts'
import type { FormatSetting } from '../../model/machine.ts'
import type { Located } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

export const settingOutOfRange: Rule = {
  id: 'setting-out-of-range',
  severity: 'error',
  summary: 'A setting is beyond what its adjuster takes.',
  why: 'The operator turns the handwheel against its stop, and the product jams or the spindle bends.',
  source: 'house rule',

  *check({ formats }) {
    for (const rows of Map.groupBy(formats, ({ setting }) => setting.value).values()) {
      for (const row of rows) {
        const { low, high } = adjusterOf(rows, row.setting.value)
        const below = low !== undefined && row.value.value < low
        if (!below && (high === undefined || row.value.value <= high)) continue
        const key = below ? 'low' : 'high'
        const limit = limitOf(rows, key)
        yield {
          message: `the setting \`${row.setting.value}\` is ${row.value.value} ${row.unit.value} for format \`${row.format.value}\`, and its adjuster goes ${below ? 'down' : 'up'} to ${below ? low : high} ${row.unit.value}`,
          place: row.value.place,
          related: limit ? [{ label: `\`${key}\` of the adjuster`, place: limit.place }] : [],
          help: `correct the value, or \`${key}\``,
        }
      }
    }
  },
}

const limitOf = (rows: readonly FormatSetting[], key: 'low' | 'high'): Located<number> | undefined => rows.find((row) => row[key])?.[key]
