import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownDrawing: Rule = {
  id: 'unknown-drawing',
  severity: 'error',
  summary: 'A page or a list names a drawing that is not in the drawing register.',
  why: 'The reader cannot open the drawing.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'drawing',
      message: 'the drawing register has no drawing',
      noun: 'drawing number',
      otherwise: 'add the drawing to the register, or remove the reference',
    })
  },
}
