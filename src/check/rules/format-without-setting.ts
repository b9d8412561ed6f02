import type { Rule } from '../rule.ts'

/** So many other formats with a setting say that each format has it. */
const enough = 2

export const formatWithoutSetting: Rule = {
  id: 'format-without-setting',
  severity: 'warning',
  summary: 'A format lacks a setting that every other format has.',
  why: 'The operator leaves the adjuster where the last format had it, and the product jams.',
  source: 'house rule',

  *check({ formats }) {
    const byFormat = Map.groupBy(formats, ({ format }) => format.value)
    if (byFormat.size <= enough) return
    for (const [setting, rows] of Map.groupBy(formats, (row) => row.setting.value)) {
      const having = new Set(rows.map(({ format }) => format.value))
      const [lacking, other] = [...byFormat].filter(([format]) => !having.has(format))
      const [place, example] = [lacking?.[1][0]?.format.place, rows[0]]
      // A setting that several formats lack is one that only some of them need.
      if (!lacking || other || !place || !example) continue
      yield {
        message: `format \`${lacking[0]}\` has no setting \`${setting}\``,
        place,
        related: [{ label: `format \`${example.format.value}\` has it`, place: example.setting.place }],
        note: `each of the other ${having.size} formats has it`,
        help: 'add a row with its value for this format',
      }
    }
  },
}
