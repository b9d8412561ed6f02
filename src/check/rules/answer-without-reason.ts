import type { Rule } from '../rule.ts'

export const answerWithoutReason: Rule = {
  id: 'answer-without-reason',
  severity: 'warning',
  summary: 'An answer does not say why it is right or wrong.',
  why: 'A learner who is wrong learns from the reason, not from the word "wrong".',
  source: 'common practice of teaching',

  *check(_, graph) {
    for (const lesson of graph.pagesIn('lessons'))
      for (const [index, { answers }] of (lesson.frontmatter.questions ?? []).entries())
        for (const [n, { because, right }] of answers.entries()) {
          if (because !== undefined) continue
          yield {
            message: `the answer does not say why it is ${right ? 'right' : 'wrong'}`,
            place: lesson.placeOf(['questions', index, 'answers', n, 'text']),
            help: 'add `because` with the reason in one sentence',
          }
        }
  },
}
