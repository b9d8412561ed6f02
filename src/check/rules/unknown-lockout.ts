import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownLockout: Rule = {
  id: 'unknown-lockout',
  severity: 'error',
  summary: 'A page asks for a lockout that does not exist.',
  why: 'The reader would work without the lockout that the page asks for.',
  source: 'house rule',
  guards: 'people',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'lockout',
      message: 'there is no lockout',
      noun: 'lockout',
      otherwise: 'write the lockout, or correct the name',
    })
  },
}
