import { askedLessons } from '../../model/asked-lessons.ts'
import type { Page } from '../../model/machine.ts'
import { taughtLesson } from '../../model/taught-lesson.ts'
import { orderOf } from '../../training/order.ts'
import { address } from '../address.ts'
import type { Context } from '../context.ts'
import type { ShownLesson } from '../training/shown-lesson.ts'

/** The lessons of a role in an order that works. */
export function pathLessons(context: Context, role: string): ShownLesson[] {
  const { machine, graph, link, titleOf, language } = context
  const asked = askedLessons(machine, graph, role).map(({ lesson }) => lesson)
  return inOrder(asked).map((lesson) => {
    const title = titleOf(lesson)
    const { minutes, needs = [], needsSignedOff = [] } = lesson.frontmatter
    return {
      taught: taughtLesson(lesson),
      title: title.text,
      ...(title.language === language ? {} : { lang: title.language }),
      href: link(address.page(lesson.id)),
      minutes,
      needs,
      needsSignedOff,
    }
  })
}

/** As near to the author's order as needs allow. A need that nobody asks of the role does not count here. */
function inOrder(lessons: readonly Page<'lessons'>[]): Page<'lessons'>[] {
  const byName = new Map(lessons.map((lesson) => [lesson.name, lesson]))
  const here = (names: readonly string[] = []) => names.filter((name) => byName.has(name))
  const found = orderOf(
    lessons.map(({ name, frontmatter: { minutes, needs, needsSignedOff } }) => ({
      id: name,
      minutes,
      needs: here(needs),
      needsSignedOff: here(needsSignedOff),
    })),
  )
  // The check refuses loops of needs; a preview shows the path in spite of them.
  return 'order' in found ? found.order.flatMap((name) => byName.get(name) ?? []) : [...lessons]
}
