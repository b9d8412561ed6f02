import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownIsolationPoint: Rule = {
  id: 'unknown-isolation-point',
  severity: 'error',
  summary: 'An energy source or a step of a lockout names an isolation point that energy.yaml does not have.',
  why: 'The board would be short of a point, and its energy stays on.',
  source: '29 CFR 1910.147(d)(3)',
  guards: 'people',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'point',
      message: 'energy.yaml has no isolation point',
      noun: 'point',
      otherwise: 'add the point under `points` of energy.yaml, or correct the number',
    })
  },
}
