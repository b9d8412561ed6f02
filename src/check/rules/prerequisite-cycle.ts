import type { Page } from '../../model/machine.ts'
import type { Place } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

type Lesson = Page<'lessons'>

export const prerequisiteCycle: Rule = {
  id: 'prerequisite-cycle',
  severity: 'error',
  summary: 'A lesson ends up needing itself.',
  why: 'No order of these lessons can be taught.',
  source: 'house rule',

  *check({ pages }) {
    const lessons = pages.filter((page) => page.collection === 'lessons')
    const byName = new Map(lessons.map((lesson) => [lesson.name, lesson]))
    const told = new Set<Lesson>()
    for (const lesson of lessons) {
      const circle = told.has(lesson) ? [] : shortestCircle(lesson, byName)
      const [first, ...others] = circle
      if (!first || circle.some(({ from }) => told.has(from))) continue
      for (const { from } of circle) told.add(from)
      yield {
        message: others.length === 0 ? `lesson \`${lesson.name}\` needs itself` : `lesson \`${lesson.name}\` ends up needing itself`,
        place: first.place,
        related: others.map(({ from, to, place }) => ({ label: `\`${from.name}\` needs \`${to.name}\``, place })),
        help: others.length === 0 ? 'take it out of its own `needs`' : 'take out one of the needs shown',
      }
    }
  },
}

interface Need {
  from: Lesson
  to: Lesson
  place: Place
}

/** The fewest needs that lead from a lesson back to it, in their order; none when there is no way back. */
function shortestCircle(start: Lesson, byName: ReadonlyMap<string, Lesson>): Need[] {
  const reachedBy = new Map<Lesson, Need>()
  const queue = [start]
  for (let from = queue.shift(); from; from = queue.shift()) {
    const needs = (['needs', 'needsSignedOff'] as const).flatMap((key) =>
      (from.frontmatter[key] ?? []).map((name, index) => ({ to: byName.get(name), place: from.placeOf([key, index]) })),
    )
    for (const { to, place } of needs) {
      if (!to || reachedBy.has(to)) continue
      reachedBy.set(to, { from, to, place })
      if (to !== start) queue.push(to)
      else return wayTo(start, start, reachedBy)
    }
  }
  return []
}

function wayTo(end: Lesson, start: Lesson, reachedBy: ReadonlyMap<Lesson, Need>): Need[] {
  const last = reachedBy.get(end)
  if (!last) return []
  return last.from === start ? [last] : [...wayTo(last.from, start, reachedBy), last]
}
