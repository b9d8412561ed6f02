import type { Page } from '../../model/machine.ts'
import type { Duty } from '../../model/schema/training.ts'
import { speakInput } from '../../model/words.ts'
import { address } from '../address.ts'
import type { Context } from '../context.ts'
import { levelText } from '../parts/reading-level.ts'
import { roleName } from '../parts/role-name.ts'
import { rolesWithLessons } from '../site-map.ts'
import { planLesson, planLessons } from './plan-lessons.ts'
import type { PlanningLesson, PlanningSheet } from './planning-sheet.ts'
import { usualMinutes } from './usual-minutes.ts'

/** Duties of 29 CFR 1910.147(c)(7), which the certificate of its (iv) is about. */
const lockoutDuties: readonly Duty[] = ['authorised', 'affected', 'other', 'tags-only']

export function planningSheetOf(context: Context): PlanningSheet {
  const { machine, graph, language } = context
  const { training } = machine
  const roles = rolesWithLessons(machine, graph).map((id) => ({
    id,
    name: roleName(context, id),
    needs: training.roles.find((role) => role.id === id)?.needs ?? {},
    asked: planLessons(context, id).map(({ taught, why }) => ({ lesson: taught.id, why })),
  }))
  const skills = training.skills.map(({ id, name, people, lessons }) => ({
    id,
    name: speakInput(name, language, machine.sourceLanguage).text,
    ...(people === undefined ? {} : { people }),
    lessons,
  }))
  const named = new Set([...roles.flatMap(({ asked }) => asked.map(({ lesson }) => lesson)), ...skills.flatMap(({ lessons }) => lessons)])
  const lessons = graph.pagesIn('lessons').filter(({ name }) => named.has(name))
  return { limits: training.sessions ?? { minutes: usualMinutes }, lessons: lessons.map((lesson) => planningLesson(context, lesson)), roles, skills }
}

function planningLesson(context: Context, page: Page<'lessons'>): PlanningLesson {
  const reading = levelText(context, page.id)
  return {
    ...planLesson(page, context.language),
    href: context.link(address.page(page.id)),
    ...(reading === undefined ? {} : { reading }),
    isLockout: (page.frontmatter.duties ?? []).some((duty) => lockoutDuties.includes(duty)),
  }
}
