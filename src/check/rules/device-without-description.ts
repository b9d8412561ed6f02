import { describer } from '../../model/coverage.ts'
import type { Rule } from '../rule.ts'

const said = {
  filler: 'stands in for a description',
  tag: 'repeats the tag',
  kind: 'repeats the kind',
} as const

export const deviceWithoutDescription: Rule = {
  id: 'device-without-description',
  severity: 'warning',
  summary: 'The description of a device says nothing about what it does.',
  why: 'The reader who finds the tag still does not know what it is for.',
  source: 'house rule',

  *check(machine) {
    const { devices, sourceLanguage } = machine
    const why = describer(machine)
    for (const device of devices) {
      const reason = why(device)
      const description = device.description[sourceLanguage]
      if (!reason || !description) continue
      yield {
        message: `the description of \`${device.tag.value}\` ${said[reason]}`,
        place: description.place,
        ...(reason === 'kind' ? { note: 'other devices are of this kind too' } : {}),
        help: 'say what it does on this machine: `Lift at the bottom position`',
      }
    }
  },
}
