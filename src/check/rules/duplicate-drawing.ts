import { normalise } from '../../model/designation.ts'
import { duplicates, usedTwice } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicateDrawing: Rule = {
  id: 'duplicate-drawing',
  severity: 'error',
  summary: 'Two rows of the drawing register have the same number.',
  why: 'One of the drawings cannot be reached.',
  source: 'house rule',
  guards: 'build',

  *check({ drawings }) {
    yield* duplicates(
      drawings,
      ({ number }) => number,
      normalise,
      usedTwice('drawing number'),
      'give one of them another number, or put the two rows together',
    )
  },
}
