import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownArea: Rule = {
  id: 'unknown-area',
  severity: 'error',
  summary: 'A page or a list names an area that machine.yaml does not have.',
  why: 'The device, alarm or lockout would belong to no place on the plan.',
  source: 'house rule',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'area',
      message: 'machine.yaml has no area',
      noun: 'area',
      otherwise: 'add the area to machine.yaml, or correct the name',
    })
  },
}
