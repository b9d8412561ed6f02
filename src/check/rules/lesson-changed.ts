import { taughtHash } from '../../model/taught-hash.ts'
import type { Rule } from '../rule.ts'

export const lessonChanged: Rule = {
  id: 'lesson-changed',
  severity: 'warning',
  summary: 'A lesson teaches something else than its revision taught, and the revision was not raised.',
  why: 'People who took the old text count as taught, and nothing on their record tells the two apart.',
  source: 'ISO 9001:2015 7.5.3 (control of changes); 29 CFR 1910.147(c)(7)(iii)(A) asks for retraining when a procedure changes',

  *check(_, graph) {
    for (const lesson of graph.pagesIn('lessons')) {
      const history = lesson.frontmatter.history ?? []
      const last = history.at(-1)
      if (!last || last.revision !== lesson.frontmatter.revision) continue
      const place = lesson.placeOf(['history', history.length - 1, 'hash'])
      if (last.hash === undefined && history.some(({ hash }) => hash !== undefined))
        yield {
          message: `revision \`${last.revision}\` was not stamped, so nobody is told when its text changes`,
          place: lesson.placeOf(['history', history.length - 1, 'revision']),
          help: `run \`fettle revised ${lesson.source.file}\``,
        }
      if (last.hash === undefined || last.hash === taughtHash(lesson)) continue
      yield {
        message: `the lesson has changed since its revision \`${last.revision}\` of ${last.date} was stamped`,
        place,
        help: `raise \`revision\` and say under \`history\` what has changed, then run \`fettle revised ${lesson.source.file}\``,
      }
    }
  },
}
