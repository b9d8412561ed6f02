import { planSheet } from '../../model/plan-sheet.ts'
import type { Rule } from '../rule.ts'

export const positionOffPlan: Rule = {
  id: 'position-off-plan',
  severity: 'warning',
  summary: 'A device is placed beside the plan.',
  why: 'Its mark is cut off, and the reader does not find it.',
  source: 'house rule',

  *check(machine) {
    const { devices, placeOf } = machine
    const sheet = planSheet(machine)
    if (!sheet?.readable || sheet.viewBox.width <= 0) return
    const { x: left, y: top, width, height } = sheet.viewBox
    for (const { tag, x, y } of devices) {
      if (!x || !y) continue
      const across = x.value < left || x.value > left + width
      if (!across && y.value >= top && y.value <= top + height) continue
      yield {
        message: `\`${tag.value}\` lies beside the plan, at ${x.value}, ${y.value}`,
        place: (across ? x : y).place,
        related: [{ label: 'the plan is chosen here', place: placeOf(['plan', 'drawing']) }],
        note: `the plan reaches from ${left}, ${top} to ${left + width}, ${top + height}`,
        help: 'write the position in the units of the plan',
      }
    }
  },
}
