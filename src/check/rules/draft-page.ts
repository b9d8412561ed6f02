import { isDraft } from '../../model/coverage.ts'
import type { Rule } from '../rule.ts'

export const draftPage: Rule = {
  id: 'draft-page',
  severity: 'note',
  summary: 'A page is marked as a draft.',
  why: 'The site shows it marked as unfinished, and the reader at the machine has nothing to rely on.',
  source: 'house rule',

  *check({ pages }) {
    for (const page of pages)
      if (isDraft(page))
        yield {
          message: 'the page is a draft',
          place: page.placeOf(['draft']),
          note: 'coverage counts it as not written',
          help: 'write the page, then take `draft` out',
        }
  },
}
