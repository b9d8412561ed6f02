import type { Rule } from '../rule.ts'

export const partOfOtherTechnology: Rule = {
  id: 'part-of-other-technology',
  severity: 'error',
  summary: 'The data of a part are those of another technology than its devices have.',
  why: 'What the devices should read is computed from values that do not belong to them.',
  source: 'house rule',

  *check({ checkout, devices }) {
    const byPart = Map.groupBy(devices, ({ part }) => part?.value)
    for (const { name, technology } of checkout?.parts ?? []) {
      const other = technology && (byPart.get(name.value) ?? []).find((device) => device.technology && device.technology.value !== technology.value)
      if (!technology || !other?.technology) continue
      yield {
        message: `part \`${name.value}\` is described as ${technology.value}, and \`${other.tag.value}\`, which has it, is ${other.technology.value}`,
        place: technology.place,
        related: [{ label: 'the device', place: other.technology.place }],
        help: 'correct the technology here or in the device list',
      }
    }
  },
}
