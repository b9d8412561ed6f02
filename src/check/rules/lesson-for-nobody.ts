import { askedLessons } from '../../model/asked-lessons.ts'
import type { Rule } from '../rule.ts'

export const lessonForNobody: Rule = {
  id: 'lesson-for-nobody',
  severity: 'warning',
  summary: 'A lesson is asked of no role.',
  why: 'It was written, and nobody will be sent to it.',
  source: 'house rule; ISO 29993 asks for the people that a lesson is for',

  *check(machine, graph) {
    const { roles, sequences } = machine.training
    if (machine.unread.has('role') || roles.length === 0) return
    const asked = new Set(roles.flatMap(({ id }) => askedLessons(machine, graph, id).map(({ lesson }) => lesson.name)))
    // A sequence of a role that is misnamed asks somebody, too.
    for (const { lessons } of sequences) for (const name of lessons) asked.add(name)
    // What is written for every machine need not serve this one.
    for (const lesson of graph.pagesIn('lessons').filter(({ shared }) => !shared)) {
      const isMisnamed = lesson.frontmatter.roles?.some((role) => !roles.some(({ id }) => id === role))
      if (asked.has(lesson.name) || isMisnamed || lesson.frontmatter.draft) continue
      yield {
        message: `no role is asked to take the lesson \`${lesson.name}\``,
        place: lesson.placeOf(['roles']),
        help: 'name a role under `roles`, or the lesson in a sequence or a skill of training.yaml',
      }
    }
  },
}
