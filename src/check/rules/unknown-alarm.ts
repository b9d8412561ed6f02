import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownAlarm: Rule = {
  id: 'unknown-alarm',
  severity: 'error',
  summary: 'A page names an alarm that is not in the alarm list.',
  why: 'An operator who has this number on the screen is sent nowhere.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'alarm',
      message: 'the alarm list has no alarm',
      noun: 'alarm number',
      otherwise: 'add the alarm to the alarm list, or remove the reference',
      beforeChoosing: 'check the alarm list before you choose one',
    })
  },
}
