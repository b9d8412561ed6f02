import { normalise } from '../../model/designation.ts'
import { duplicates, usedTwice } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicateTag: Rule = {
  id: 'duplicate-tag',
  severity: 'error',
  summary: 'Two devices have the same tag, or tags that differ only in spelling.',
  why: 'A label, a page and a drawing can then mean either of them.',
  source: 'house rule',
  guards: 'build',

  *check({ devices }) {
    yield* duplicates(
      devices,
      ({ tag }) => tag,
      normalise,
      usedTwice('tag'),
      'give one of them another tag, or remove the row if it is the same device',
    )
  },
}
