import type { Rule } from '../rule.ts'
import { signalsOfTechnology } from '../signals-of-technology.ts'

export const signalAgainstDevice: Rule = {
  id: 'signal-against-device',
  severity: 'error',
  summary: 'The signals of a device contradict its technology: a sensor wired to an output, a thermocouple to a Pt100 input.',
  why: 'Type or technology is wrong, and the lesson tells what cannot be measured.',
  source: 'house rule; which signals a device has is common practice',

  *check({ devices, signals }) {
    const byTag = Map.groupBy(signals, ({ tag }) => tag.value)
    for (const { tag, technology } of devices) {
      const fitting = technology && signalsOfTechnology[technology.value]
      const own = byTag.get(tag.value) ?? []
      const [first] = own
      // A device may have further signals: the lamp of a button, the test input of a light beam.
      if (!fitting || !first || own.some(({ type }) => fitting.includes(type.value))) continue
      yield {
        message: `\`${tag.value}\` is \`${technology.value}\`, and ${own.length === 1 ? 'its signal is' : 'the first of its signals is'} ${first.type.value}`,
        place: first.type.place,
        related: [{ label: 'its technology', place: technology.place }],
        note: `such a device has ${fitting.slice(0, -1).join(', ')} or ${fitting.at(-1)}`,
        help: 'correct the tag or the type of the signal, or the technology of the device',
      }
    }
  },
}
