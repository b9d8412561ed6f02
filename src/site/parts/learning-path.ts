import { askedLessons } from '../../model/asked-lessons.ts'
import type { Page } from '../../model/machine.ts'
import { plannedLesson } from '../../model/planned-lesson.ts'
import { orderOf } from '../../training/order.ts'
import { address } from '../address.ts'
import type { Context } from '../context.ts'
import { shownLesson } from '../training/plan-lessons.ts'
import type { ShownLesson } from '../training/shown-lesson.ts'

/** The lessons of a role in an order that works. */
export function pathLessons(context: Context, role: string): ShownLesson[] {
  const { machine, graph, link, language } = context
  const asked = askedLessons(machine, graph, role).map(({ lesson }) => lesson)
  return inOrder(asked).map((lesson) => ({ ...shownLesson(lesson, language), href: link(address.page(lesson.id)) }))
}

/** As near to the author's order as needs allow. A need that nobody asks of the role does not count here. */
function inOrder(lessons: readonly Page<'lessons'>[]): Page<'lessons'>[] {
  const byName = new Map(lessons.map((lesson) => [lesson.name, lesson]))
  const here = (names: readonly string[]) => names.filter((name) => byName.has(name))
  const found = orderOf(
    lessons.map(plannedLesson).map((lesson) => ({ ...lesson, needs: here(lesson.needs), needsSignedOff: here(lesson.needsSignedOff) })),
  )
  // The check refuses loops of needs; a preview shows the path in spite of them.
  return 'order' in found ? found.order.flatMap((name) => byName.get(name) ?? []) : [...lessons]
}
