import { editDistance } from '../../model/edit-distance.ts'
import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownRole: Rule = {
  id: 'unknown-role',
  severity: 'error',
  summary: 'A lesson or a course names a role that training.yaml does not have.',
  why: 'Nobody would be asked to take the lesson.',
  source: 'house rule',

  *check(machine) {
    const roles = machine.training.roles.map(({ id }) => id)
    // Shared lessons name the roles of every machine, and a machine may have other roles or none; a slip from one that it has is a slip.
    const references = machine.references.filter(
      ({ kind, id, page }) => kind === 'role' && (!page?.page.shared || roles.some((role) => isSlip(id, role))),
    )
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

const isSlip = (written: string, role: string) => role.length > 4 && editDistance(written, role, 1) === 1
