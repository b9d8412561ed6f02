import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownCaution: Rule = {
  id: 'unknown-caution',
  severity: 'error',
  summary: 'A page includes a standard caution that does not exist.',
  why: 'The warning would be missing where it is needed.',
  source: 'house rule',
  guards: 'people',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'caution',
      message: 'there is no standard caution',
      noun: 'caution',
      otherwise: 'write it in content/cautions, or write the message on the page',
    })
  },
}
