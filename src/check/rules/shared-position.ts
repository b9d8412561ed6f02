import type { Device } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { tagNumber } from '../tag-number.ts'

/** More devices on one spot are a place by intention: everything in a cabinet, a valve island. */
const byMistake = 3

export const sharedPosition: Rule = {
  id: 'shared-position',
  severity: 'warning',
  summary: 'Two devices have the same position on the plan.',
  why: 'One of them is marked where the other one is, and only one of the marks can be touched.',
  source: 'house rule',

  *check({ devices }) {
    const spots = Map.groupBy(devices, ({ x, y }) => (x && y ? `${x.value} ${y.value}` : ''))
    spots.delete('')
    for (const onSpot of spots.values()) {
      const [first, ...others] = oneEach(onSpot)
      if (!first || others.length >= byMistake) continue
      for (const { tag, x } of others) {
        yield {
          message: `\`${tag.value}\` has the position of \`${first.tag.value}\` on the plan`,
          place: x?.place ?? tag.place,
          related: [{ label: `\`${first.tag.value}\` is placed here`, place: first.x?.place ?? first.tag.place }],
          help: 'correct one of the positions; where both are in one place, move one mark beside the other',
        }
      }
    }
  },
}

/** One device of each apparatus: a button and its lamp, the two coils of a valve. */
function oneEach(devices: readonly Device[]): Device[] {
  const first = new Map<string, Device>()
  for (const device of devices) {
    const { tag, part, technology } = device
    const key = part && technology?.value === 'solenoid-valve' ? `part ${part.value}` : tagNumber(tag.value)
    if (!first.has(key)) first.set(key, device)
  }
  // A tag that is there twice is reported as such.
  return [...new Map([...first.values()].map((device) => [device.tag.value, device])).values()]
}
