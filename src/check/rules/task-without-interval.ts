import { isDraft, isMaintenance } from '../../model/coverage.ts'
import type { Rule } from '../rule.ts'

export const taskWithoutInterval: Rule = {
  id: 'task-without-interval',
  severity: 'warning',
  summary: 'A maintenance or cleaning job does not say when it is due.',
  why: 'A job that nobody can plan is done too late, or by chance.',
  source: 'house rule',

  *check(_, graph) {
    for (const page of graph.pagesIn('procedures')) {
      const { kind, interval, when } = page.frontmatter
      if (!isMaintenance(page) || isDraft(page) || interval || when) continue
      yield {
        message: `nothing says when to ${kind === 'clean' ? 'clean' : 'do this job'}`,
        place: page.placeOf(['kind']),
        help: 'add `interval: { every: 500, unit: h }`, or `when:` with what calls for it',
      }
    }
  },
}
