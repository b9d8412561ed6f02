import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownRole: Rule = {
  id: 'unknown-role',
  severity: 'error',
  summary: 'A lesson or a course names a role that training.yaml does not have.',
  why: 'Nobody would be asked to take the lesson.',
  source: 'house rule',

  *check(machine) {
    // Shared lessons name the roles of every machine, and a machine may have other roles or none.
    const references = machine.references.filter(({ page }) => !page?.page.shared)
    yield* unknownNames(
      { ...machine, references },
      {
        kind: 'role',
        message: 'training.yaml has no role',
        noun: 'role',
        otherwise: 'add the role to training.yaml, or correct the name',
      },
    )
  },
}
