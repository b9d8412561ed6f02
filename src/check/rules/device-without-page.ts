import { pagesAbout } from '../../model/coverage.ts'
import { partlyRead } from '../partly-read.ts'
import type { Rule } from '../rule.ts'

export const deviceWithoutPage: Rule = {
  id: 'device-without-page',
  severity: 'note',
  summary: 'An alarm names a device of which no page speaks, not even the recovery of the alarm.',
  why: 'The alarm sends the reader to a device, and nothing says what to look for there. Other devices without a page are counted by the coverage alone.',
  source: 'house rule',

  *check(machine, graph) {
    if (partlyRead(machine)) return
    for (const device of machine.devices) {
      const [alarm] = graph.alarmsOf(device.tag.value).filter(({ number }) => graph.recoveryOf(number.value))
      if (!alarm || pagesAbout(device, graph).length > 0) continue
      const named = alarm.tags.find(({ value }) => value === device.tag.value)
      yield {
        message: `no page speaks of \`${device.tag.value}\``,
        place: device.tag.place,
        ...(named ? { related: [{ label: `alarm \`${alarm.number.value}\` names it here`, place: named.place }] } : {}),
        help: 'say in the recovery of the alarm what to look for at the device',
      }
    }
  },
}
