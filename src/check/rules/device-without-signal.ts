import { normalise } from '../../model/designation.ts'
import type { Machine } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'
import { wiredToController } from '../signals-of-technology.ts'
import { suggestFrom } from '../suggest.ts'

export const deviceWithoutSignal: Rule = {
  id: 'device-without-signal',
  severity: 'warning',
  summary: 'A sensor or a solenoid valve has no signal in the I/O list.',
  why: 'Its page cannot say where to measure, and a lesson about it has no address.',
  source: 'house rule; which devices are wired to the controller is common practice',

  *check(machine) {
    const { devices, signals, absent } = machine
    // Without an I/O list nothing is missing from it.
    if (signals.length === 0) return
    const wired = new Set(signals.map(({ tag }) => normalise(tag.value)))
    const near = suggestFrom(unknownTags(machine))
    for (const { tag, technology } of devices) {
      if (!technology || !wiredToController.has(technology.value) || wired.has(normalise(tag.value))) continue
      // Its row is broken, or its tag has a slip there.
      if (absent.has(`signal:${tag.value}`)) continue
      const meant = near(tag.value)
      if (meant.same !== undefined || meant.near.length > 0) continue
      yield {
        message: `\`${tag.value}\` has no signal in the I/O list`,
        place: tag.place,
        related: [{ label: `its technology is \`${technology.value}\``, place: technology.place }],
        help: 'add its row to the I/O list, or leave the technology out if it is wired to no controller',
      }
    }
  },
}

function unknownTags({ devices, signals, absent }: Machine): string[] {
  const known = new Set(devices.map(({ tag }) => tag.value))
  const broken = [...absent.keys()].flatMap((name) => (name.startsWith('signal:') ? [name.slice('signal:'.length)] : []))
  return [...signals.map(({ tag }) => tag.value), ...broken].filter((tag) => !known.has(tag))
}
