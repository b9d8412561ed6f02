import type { Rule } from '../rule.ts'

export const adjusterDiffers: Rule = {
  id: 'adjuster-differs',
  severity: 'error',
  summary: 'An adjuster is given other limits, another pitch or another way to turn under one format than under another, or a pitch of nothing.',
  why: 'The adjuster is the same piece of iron, whatever product runs: one of the two sends the operator the wrong way.',
  source: 'house rule',

  *check({ formats }) {
    for (const [setting, rows] of Map.groupBy(formats, (row) => row.setting.value))
      for (const key of ['low', 'high', 'perTurn', 'raises'] as const) {
        const first = rows.find((row) => row[key])
        for (const row of rows) {
          const [value, known] = [row[key], first?.[key]]
          if (!first || !value || !known) continue
          if (key === 'perTurn' && typeof value.value === 'number' && value.value <= 0)
            yield {
              message: `one turn changes the setting \`${setting}\` by ${value.value}`,
              place: value.place,
              help: 'give the pitch as a positive number, and the way to turn under `raises`',
            }
          else if (value.value !== known.value)
            yield {
              message: `\`${key}\` of the setting \`${setting}\` is ${value.value} here`,
              place: value.place,
              related: [{ label: `it is ${known.value} for format \`${first.format.value}\``, place: known.place }],
              help: 'give both the same value, or leave one empty',
            }
        }
      }
  },
}
