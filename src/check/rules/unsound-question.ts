import type { Page } from '../../model/machine.ts'
import type { Question } from '../../model/schema/training.ts'
import type { Rule } from '../rule.ts'

export const unsoundQuestion: Rule = {
  id: 'unsound-question',
  severity: 'error',
  summary: 'A question has no right answer, too many, or an answer twice.',
  why: 'The learner is told to be wrong when right, and the record says so for years.',
  source: 'house rule',

  *check(_, graph) {
    for (const lesson of graph.pagesIn('lessons'))
      for (const [index, question] of (lesson.frontmatter.questions ?? []).entries()) {
        const place = lesson.placeOf(['questions', index, 'ask'])
        const right = question.answers.filter(({ right }) => right).length
        if (right === 0) yield { message: 'no answer of the question is right', place, help: 'write `right: true` at the answer that is' }
        else if (right > 1 && question.choose !== 'several')
          yield {
            message: `${right} answers of the question are right, and one is to be chosen`,
            place,
            help: 'leave `right: true` at one answer, or write `choose: several`',
          }
        yield* repeated(lesson, index, question)
      }
  },
}

function* repeated(lesson: Page<'lessons'>, index: number, { answers }: Question) {
  const first = new Map<string, number>()
  for (const [n, { text }] of answers.entries()) {
    const key = text.trim().toLowerCase()
    const before = first.get(key)
    if (before === undefined) first.set(key, n)
    else
      yield {
        message: 'the question has this answer twice',
        place: lesson.placeOf(['questions', index, 'answers', n, 'text']),
        related: [{ label: 'the first', place: lesson.placeOf(['questions', index, 'answers', before, 'text']) }],
        help: 'write another answer, or take one out',
      }
  }
}
