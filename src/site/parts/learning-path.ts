import { askedLessons } from '../../model/asked-lessons.ts'
import type { Page } from '../../model/machine.ts'
import { taughtLesson } from '../../model/taught-lesson.ts'
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

/** The author's order, each lesson behind what it needs: the first that is ready comes next. */
function inOrder(lessons: readonly Page<'lessons'>[]): Page<'lessons'>[] {
  const here = new Set(lessons.map(({ name }) => name))
  const [ordered, placed] = [[] as Page<'lessons'>[], new Set<string>()]
  const isReady = ({ name, frontmatter: { needs = [], needsSignedOff = [] } }: Page<'lessons'>) =>
    !placed.has(name) && [...needs, ...needsSignedOff].every((need) => placed.has(need) || !here.has(need))
  for (let next = lessons.find(isReady); next; next = lessons.find(isReady)) {
    ordered.push(next)
    placed.add(next.name)
  }
  // The check refuses circles of needs; what stands in one would come last.
  return [...ordered, ...lessons.filter(({ name }) => !placed.has(name))]
}
