import { leavesOutAffected, trainingFaults } from '../../energy/certificates.ts'
import type { Graph } from '../../model/graph.ts'
import type { Page } from '../../model/machine.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const incompleteCertificate: Rule = {
  id: 'incomplete-certificate',
  severity: 'error',
  summary: 'A record of training for a lockout has no day, or a record or an inspection leaves people out.',
  why: 'Somebody locks out, or works beside tags, who was never shown how.',
  source: "29 CFR 1910.147(c)(6)(i)(D) and (c)(7)(iv). The employer's programme comes first",
  guards: 'people',

  *check(_machine, graph, today) {
    for (const page of graph.pagesIn('lockout')) {
      yield* ofTraining(page, today)
      yield* ofInspection(page, graph)
    }
  },
}

/** Where a site keeps no records on the page, nothing is asked of them. */
function* ofTraining({ frontmatter, placeOf }: Page<'lockout'>, today: string): Iterable<Problem> {
  const { training, users = [] } = frontmatter
  if (!training) return
  const { without, undated, ahead } = trainingFaults(training, users, today)
  for (const record of undated)
    yield {
      message: `the training of \`${training[record]?.employee}\` has no day`,
      place: placeOf(['training', record, 'dates']),
      note: 'a record of training holds the name and the days',
      help: 'write each day of it under `dates`',
    }
  for (const { record, date } of ahead)
    yield {
      message: `the training of \`${training[record]?.employee}\` is dated ${date}, a day that has not come`,
      place: placeOf(['training', record, 'dates', training[record]?.dates.indexOf(date) ?? 0]),
      help: 'write the day on which it was',
    }
  for (const name of without)
    yield {
      message: `\`${name}\` uses this lockout, and no training is recorded`,
      place: placeOf(['users', users.indexOf(name)]),
      related: [{ label: 'the records', place: placeOf(['training']) }],
      help: 'train them before they use it, and record name and days',
    }
}

function* ofInspection(page: Page<'lockout'>, graph: Graph): Iterable<Problem> {
  const { inspection } = page.frontmatter
  const tagged = graph.sourcesOf(page).flatMap(({ isolation }) => isolation.filter(({ tagOut }) => tagOut))[0]
  if (!inspection || !leavesOutAffected(inspection.affected, tagged !== undefined)) return
  yield {
    message: 'the inspection leaves out those who work near this lockout',
    place: page.placeOf(['inspection']),
    related: tagged ? [{ label: 'here a tag stands in place of a lock', place: tagged.point.place }] : [],
    note: 'with tags the review is held with each affected employee too: what a tag can do and what it cannot',
    help: 'hold it with them, and write their names under `affected`',
  }
}
