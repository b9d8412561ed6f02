import { normalise } from '../../model/designation.ts'
import { duplicates, usedTwice } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicateAlarm: Rule = {
  id: 'duplicate-alarm',
  severity: 'error',
  summary: 'Two rows of the alarm list have the same number.',
  why: 'The number on the screen then leads to one of two recoveries.',
  source: 'house rule',
  guards: 'build',

  *check({ alarms }) {
    yield* duplicates(
      alarms,
      ({ number }) => number,
      normalise,
      usedTwice('alarm number'),
      'give one of them another number, or remove the row if it is the same alarm',
    )
  },
}
