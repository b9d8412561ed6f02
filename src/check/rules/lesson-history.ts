import type { Page } from '../../model/machine.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const lessonHistory: Rule = {
  id: 'lesson-history',
  severity: 'error',
  summary: 'The history of a lesson does not end with its revision, or is out of order.',
  why: 'Who has to be taught again is computed from it: with a wrong date people count as trained who are not.',
  source: 'ANSI/ASSP Z490.1 (records are dated, with the dates of revisions; from a summary)',

  *check(_, graph) {
    for (const lesson of graph.pagesIn('lessons')) yield* faultsOf(lesson)
  },
}

function* faultsOf({ frontmatter: { history = [], revision }, placeOf }: Page<'lessons'>): Iterable<Problem> {
  const last = history.at(-1)
  if (last && last.revision !== revision)
    yield {
      message: `the lesson is at revision \`${revision}\`, and its history ends with \`${last.revision}\``,
      place: placeOf(['revision']),
      related: [{ label: 'the last revision told', place: placeOf(['history', history.length - 1, 'revision']) }],
      help: `add revision \`${revision}\` to \`history\`, with what it changes, or correct the revision`,
    }
  const first = new Map<string, number>()
  for (const [index, { revision, date }] of history.entries()) {
    const before = history[index - 1]
    if (before && before.date > date)
      yield {
        message: `revision \`${revision}\` is older than \`${before.revision}\`, which comes before it`,
        place: placeOf(['history', index, 'date']),
        help: 'put the oldest first, or correct the date',
      }
    const same = first.get(revision)
    if (same === undefined) first.set(revision, index)
    else
      yield {
        message: `revision \`${revision}\` stands twice in the history`,
        place: placeOf(['history', index, 'revision']),
        related: [{ label: 'the first', place: placeOf(['history', same, 'revision']) }],
        help: 'give the later one the next revision',
      }
  }
}
