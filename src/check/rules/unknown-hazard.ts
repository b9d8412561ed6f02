import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownHazard: Rule = {
  id: 'unknown-hazard',
  severity: 'error',
  summary: 'A safety message or an energy source names a hazard that hazards.yaml does not have.',
  why: 'The text and the signal word of the message come from there, and would be missing.',
  source: 'house rule',
  guards: 'people',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'hazard',
      message: machine.hazards ? 'hazards.yaml has no hazard' : 'no list of hazards declares',
      noun: 'hazard',
      otherwise: machine.hazards
        ? 'add the hazard to hazards.yaml, or correct the name'
        : 'name the list in machine.yaml: `data: { hazards: { file: data/hazards.yaml } }`',
    })
  },
}
