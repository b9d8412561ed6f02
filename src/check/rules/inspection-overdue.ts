import { inspectionFaults } from '../../energy/inspection.ts'
import type { Rule } from '../rule.ts'

export const inspectionOverdue: Rule = {
  id: 'inspection-overdue',
  severity: 'warning',
  summary: 'The last periodic inspection of a lockout is more than a year old, or was done by one of its users.',
  why: 'A procedure that nobody else has looked at drifts away from the machine.',
  source: '29 CFR 1910.147(c)(6)(i) and (i)(A)',
  guards: 'people',

  *check(_, graph, today) {
    for (const { frontmatter, placeOf } of graph.pagesIn('lockout')) {
      const { inspection, users = [] } = frontmatter
      if (!inspection) continue
      const { overdueSince, inspectorUsesIt } = inspectionFaults(inspection, users, today)
      if (overdueSince !== undefined) {
        yield {
          message: `the inspection of this lockout was due on ${overdueSince}`,
          place: placeOf(['inspection', 'date']),
          note: 'a lockout is inspected at least once a year',
          help: 'let an authorised employee who does not use it inspect it, and write the new date',
        }
      }
      if (inspectorUsesIt) {
        yield {
          message: `\`${inspection.inspector}\` inspected a lockout of which they are a user`,
          place: placeOf(['inspection', 'inspector']),
          related: [{ label: 'named as a user here', place: placeOf(['users', users.indexOf(inspection.inspector)]) }],
          help: 'let somebody else who is authorised inspect it',
        }
      }
    }
  },
}
