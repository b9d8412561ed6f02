import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownTag: Rule = {
  id: 'unknown-tag',
  severity: 'error',
  summary: 'A page or a list names a device tag that is not in the device list.',
  why: 'A technician who looks for this tag at the machine will not find it.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'tag',
      message: 'no device has the tag',
      noun: 'tag',
      otherwise: 'add the device to the device list, or remove the reference',
      beforeChoosing: 'check the drawing before you choose one',
    })
  },
}
