import type { FormatSetting } from '../../model/machine.ts'
import { converted } from '../../model/unit-scale.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

/** The other formats, so many of them, lie within twice the smallest; one that is this many times off is a slip of a digit or a point. */
const enough = 2
const alike = 2
const farOff = 5

export const settingOutOfLine: Rule = {
  id: 'setting-out-of-line',
  severity: 'warning',
  summary: 'The unit or the value of a setting is not like that of the other formats.',
  why: 'The operator turns the adjuster to a value that it does not have, or at which the product jams.',
  source: 'house rule',

  *check({ formats }) {
    for (const rows of Map.groupBy(formats, ({ setting }) => setting.value).values()) {
      for (const row of rows) {
        const others = rows.filter(({ format }) => format.value !== row.format.value)
        const [first] = others
        if (!first || others.length < enough || others.some(({ unit }) => unit.value !== first.unit.value)) continue
        const problem = row.unit.value === first.unit.value ? valueProblem(row, others, first) : unitProblem(row, first)
        if (problem) yield problem
      }
    }
  },
}

function unitProblem({ format, setting, value, unit }: FormatSetting, first: FormatSetting): Problem {
  const there = converted(value.value, unit.value, first.unit.value)
  return {
    message: `the setting \`${setting.value}\` is in \`${unit.value}\` for format \`${format.value}\`, and in \`${first.unit.value}\` for the others`,
    place: unit.place,
    related: [{ label: `its unit for format \`${first.format.value}\``, place: first.unit.place }],
    ...(there === undefined ? {} : { note: `${value.value} ${unit.value} is ${Number(there.toPrecision(6))} ${first.unit.value}` }),
    help: `write it in \`${first.unit.value}\``,
  }
}

function valueProblem({ format, setting, value, unit }: FormatSetting, others: readonly FormatSetting[], first: FormatSetting): Problem | undefined {
  const sizes = others.map((other) => other.value.value)
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)]
  if (least <= 0 || most > alike * least || (value.value > least / farOff && value.value < most * farOff)) return undefined
  const range = least === most ? `${least}` : `${least} to ${most}`
  return {
    message: `the setting \`${setting.value}\` is ${value.value} ${unit.value} for format \`${format.value}\`, and ${range} ${unit.value} for the others`,
    place: value.place,
    related: [{ label: `its value for format \`${first.format.value}\``, place: first.value.place }],
    help: 'look for a digit or a decimal point too many or too few',
  }
}
