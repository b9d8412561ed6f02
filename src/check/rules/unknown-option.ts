import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownOption: Rule = {
  id: 'unknown-option',
  severity: 'error',
  summary: 'A page or a row is kept for an option that machine.yaml does not declare.',
  why: 'It would be left out of every unit without a word.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'option',
      message: 'machine.yaml declares no option',
      noun: 'option',
      otherwise: 'declare it under `options`, or correct the name',
    })
  },
}
