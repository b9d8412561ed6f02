import type { Rule } from '../rule.ts'

export const signOffNeverGiven: Rule = {
  id: 'sign-off-never-given',
  severity: 'error',
  summary: 'A lesson waits for the sign-off of one that nobody signs.',
  why: 'It could never be begun.',
  source: 'house rule',

  *check(_, graph) {
    for (const lesson of graph.pagesIn('lessons'))
      for (const [index, need] of (lesson.frontmatter.needsSignedOff ?? []).entries()) {
        const before = graph.page(`lessons/${need}`)
        if (before?.collection !== 'lessons' || before.frontmatter.signOff) continue
        yield {
          message: `\`${need}\` has to be signed off before \`${lesson.name}\`, and nobody signs it`,
          place: lesson.placeOf(['needsSignedOff', index]),
          related: [{ label: 'has no `signOff`', place: before.placeOf(['title']) }],
          help: `say under \`signOff\` of \`${need}\` who signs, or name it under \`needs\``,
        }
      }
  },
}
