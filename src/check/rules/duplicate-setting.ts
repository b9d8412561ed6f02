import type { FormatSetting } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const duplicateSetting: Rule = {
  id: 'duplicate-setting',
  severity: 'error',
  summary: 'A format has a setting twice.',
  why: 'The operator sees two values for one adjuster, and does not know which to set.',
  source: 'house rule',

  *check({ formats }) {
    const first = new Map<string, FormatSetting>()
    for (const row of formats) {
      const { format, setting, value, unit } = row
      const key = JSON.stringify([format.value, setting.value])
      const known = first.get(key)
      if (!known) {
        first.set(key, row)
        continue
      }
      const same = known.value.value === value.value && known.unit.value === unit.value
      yield {
        message: `format \`${format.value}\` has the setting \`${setting.value}\` twice`,
        place: setting.place,
        related: [{ label: 'it stands here first', place: known.setting.place }],
        note: same
          ? 'both rows have the same value'
          : `the first value is ${known.value.value} ${known.unit.value}, the second ${value.value} ${unit.value}`,
        help: same ? 'remove one of the rows' : 'remove the wrong row, or correct its format or setting',
      }
    }
  },
}
