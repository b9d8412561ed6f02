import type { Page } from '../../model/machine.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const incompleteAssessment: Rule = {
  id: 'incomplete-assessment',
  severity: 'warning',
  summary: 'A lesson does not say when it is passed, or who judges it.',
  why: 'What counts as passed would be made up on the day, by whoever is there.',
  source: 'ISO 29993 (means of assessment are told before the start); level 3 by a person: trade practice',

  *check(_, graph) {
    for (const lesson of graph.pagesIn('lessons')) yield* faultsOf(lesson)
  },
}

function* faultsOf({ frontmatter, placeOf, name }: Page<'lessons'>): Iterable<Problem> {
  const { questions, passPercent, practical, signOff, mode, level } = frontmatter
  if (questions && passPercent === undefined)
    yield { message: 'the questions have no pass mark', place: placeOf(['questions']), help: 'add `passPercent`, such as 80' }
  if (!questions && passPercent !== undefined)
    yield { message: 'there is a pass mark and no question', place: placeOf(['passPercent']), help: 'add `questions`, or take it out' }
  if (mode === 'assess' && !questions && !practical)
    yield { message: `\`${name}\` is to assess, and has nothing to judge by`, place: placeOf(['mode']), help: 'add `questions` or `practical`' }
  if (practical && !signOff)
    yield {
      message: 'nobody signs what the learner has shown',
      place: placeOf(['practical']),
      help: 'say under `signOff` which role judges it: `signOff: { by: … }`',
    }
  if (level !== undefined && level >= 3 && !practical)
    yield {
      message: `level ${level} is reached without a practical task`,
      place: placeOf(['level']),
      note: 'level 3 means: does it alone',
      help: 'add under `practical` what the learner shows, or lower the level',
    }
}
