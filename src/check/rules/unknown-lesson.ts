import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownLesson: Rule = {
  id: 'unknown-lesson',
  severity: 'error',
  summary: 'A course or a lesson needs a lesson that does not exist.',
  why: 'The learner would be sent to a page that is not there.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'lesson',
      message: 'there is no lesson',
      noun: 'lesson',
      otherwise: 'write the lesson, or correct the name',
    })
  },
}
