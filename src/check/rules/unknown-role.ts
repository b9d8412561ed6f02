import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownRole: Rule = {
  id: 'unknown-role',
  severity: 'error',
  summary: 'A lesson or a course names a role that training.yaml does not have.',
  why: 'Nobody would be asked to take the lesson.',
  source: 'house rule',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'role',
      known: machine.training.roles.map(({ id }) => id),
      message: 'training.yaml has no role',
      noun: 'role',
      otherwise: 'add the role to training.yaml, or correct the name',
    })
  },
}
