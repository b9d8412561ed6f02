import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownPart: Rule = {
  id: 'unknown-part',
  severity: 'error',
  summary: 'A page or a list names a part number that is not in the bill of materials.',
  why: 'Nobody can order a part by this number.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'part',
      message: 'the bill of materials has no part',
      noun: 'part number',
      otherwise: 'add the part to the bill of materials, or remove the reference',
      beforeChoosing: 'check the bill of materials before you choose one',
    })
  },
}
