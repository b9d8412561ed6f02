import type { Page } from '../../model/machine.ts'
import { plannedLesson } from '../../model/planned-lesson.ts'
import type { Place } from '../../source/place.ts'
import { cyclesOf } from '../../training/cycles.ts'
import type { Need } from '../../training/need.ts'
import type { Rule } from '../rule.ts'

export const prerequisiteCycle: Rule = {
  id: 'prerequisite-cycle',
  severity: 'error',
  summary: 'A lesson ends up needing itself.',
  why: 'No order of these lessons can be taught.',
  source: 'house rule',

  *check({ pages }) {
    const lessons = pages.filter((page) => page.collection === 'lessons')
    const byName = new Map(lessons.map((lesson) => [lesson.name, lesson]))
    for (const cycle of cyclesOf(lessons.map(plannedLesson))) {
      const [first, ...others] = cycle.flatMap((need) => {
        const lesson = byName.get(need.lesson)
        return lesson ? [{ ...need, place: placeOf(need, lesson) }] : []
      })
      if (!first) continue
      yield {
        message: others.length === 0 ? `lesson \`${first.lesson}\` needs itself` : `lesson \`${first.lesson}\` ends up needing itself`,
        place: first.place,
        related: others.map(({ lesson, needs, place }) => ({ label: `\`${lesson}\` needs \`${needs}\``, place })),
        help: others.length === 0 ? `take it out of its own \`${first.in}\`` : 'take out one of the needs shown',
      }
    }
  },
}

function placeOf(need: Need, lesson: Page<'lessons'>): Place {
  return lesson.placeOf([need.in, (lesson.frontmatter[need.in] ?? []).indexOf(need.needs)])
}
