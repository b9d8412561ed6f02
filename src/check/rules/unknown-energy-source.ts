import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownEnergySource: Rule = {
  id: 'unknown-energy-source',
  severity: 'error',
  summary: 'A lockout names an energy source that energy.yaml does not have.',
  why: 'An energy would be missing from the isolation board.',
  source: 'house rule',
  guards: 'people',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'energy',
      message: 'energy.yaml has no source',
      noun: 'source',
      otherwise: 'add the source to energy.yaml, or correct the name',
    })
  },
}
