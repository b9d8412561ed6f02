import type { Rule } from '../rule.ts'

export const halfPosition: Rule = {
  id: 'half-position',
  severity: 'warning',
  summary: 'A device has a position from the left and none from the top, or the other way round.',
  why: 'The device is not shown on the plan.',
  source: 'house rule',

  *check({ devices }) {
    for (const { tag, x, y } of devices) {
      const only = x ?? y
      if (!only || (x && y)) continue
      const [has, lacks] = x ? ['x', 'y'] : ['y', 'x']
      yield {
        message: `\`${tag.value}\` has \`${has}\` and no \`${lacks}\``,
        place: only.place,
        help: `write its \`${lacks}\` on the plan, or leave both empty`,
      }
    }
  },
}
