import { duplicates } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicateRecovery: Rule = {
  id: 'duplicate-recovery',
  severity: 'error',
  summary: 'Two pages tell how to recover from the same alarm.',
  why: 'The operator would see only one of them.',
  source: 'house rule',
  guards: 'build',

  *check({ pages }) {
    const recoveries = pages.filter((page) => page.collection === 'alarms')
    yield* duplicates(
      recoveries,
      ({ frontmatter, placeOf }) => ({ value: frontmatter.alarm, place: placeOf(['alarm']) }),
      (alarm) => alarm,
      (alarm) => `two pages recover from alarm \`${alarm}\``,
      'put the two pages together, or correct one of the numbers',
    )
  },
}
