import { checkouts, figure } from '../checkouts.ts'
import { beyondElement } from '../element-range.ts'
import type { Rule } from '../rule.ts'

export const rangeBeyondElement: Rule = {
  id: 'range-beyond-element',
  severity: 'error',
  summary: 'The I/O list scales a temperature further than the element is defined.',
  why: 'Nothing can be told from the card at that end, and no reading is computed for it.',
  source: 'IEC 60751 and IEC 60584-1, ranges of the reference functions',

  *check(_, graph) {
    for (const { device, wired } of graph.made(checkouts))
      for (const it of wired) {
        const beyond = beyondElement(it)
        if (!beyond) continue
        const { end, unit, name, rangeC } = beyond
        yield {
          message: `the range of \`${device.tag.value}\` goes to ${figure(end.value)} ${unit}, and ${name} is defined from ${rangeC.low} to ${rangeC.high} °C`,
          place: end.place,
          help: 'correct the range, or the kind of element',
        }
      }
  },
}
