import { duplicates } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicatePart: Rule = {
  id: 'duplicate-part',
  severity: 'error',
  summary: 'Two rows of the bill of materials have the same part number.',
  why: 'Quantity and spare class are then uncertain.',
  source: 'house rule',
  guards: 'build',

  *check({ parts }) {
    yield* duplicates(
      parts,
      ({ number }) => number,
      // On many file systems `p-1.html` is `P-1.html`.
      (number) => number.toUpperCase(),
      (number) => `the part number \`${number}\` is used twice`,
      'put the two rows together, or correct one of the numbers',
    )
  },
}
