import { type Asking, askedLessons } from '../../model/asked-lessons.ts'
import type { Page } from '../../model/machine.ts'
import { plannedLesson } from '../../model/planned-lesson.ts'
import { taughtLesson } from '../../model/taught-lesson.ts'
import { speakInput } from '../../model/words.ts'
import { type Context, titleIn } from '../context.ts'
import { roleName } from '../parts/role-name.ts'
import { fill } from '../words/fill.ts'
import type { PlanLesson } from './plan-lesson.ts'
import type { ShownLesson } from './shown-lesson.ts'

/** Who says it: what is needed of a page's context, which a command has as well. */
export type Speaker = Pick<Context, 'machine' | 'graph' | 'labels' | 'language'>

/** The lessons that a role is asked to take, in the author's order, each with the reason for it. */
export function planLessons(speaker: Speaker, role: string): PlanLesson[] {
  return askedLessons(speaker.machine, speaker.graph, role).map(({ lesson, asking }) => ({
    ...planLesson(lesson, speaker.language),
    why: whyText(speaker, role, asking),
  }))
}

/** What every list of lessons shows of one, in a language. */
export function shownLesson(page: Page<'lessons'>, language: string): Omit<ShownLesson, 'href'> {
  const title = titleIn(page, language)
  const { minutes, needs, needsSignedOff } = plannedLesson(page)
  return {
    taught: taughtLesson(page),
    title: title.text,
    ...(title.language === language ? {} : { lang: title.language }),
    minutes,
    needs,
    needsSignedOff,
  }
}

/** What a plan shows of a lesson in a language. */
export function planLesson(page: Page<'lessons'>, language: string): Omit<PlanLesson, 'why'> {
  const { mode, level } = page.frontmatter
  return {
    ...shownLesson(page, language),
    ...(mode === undefined ? {} : { mode }),
    ...(level === undefined ? {} : { level }),
  }
}

function whyText(speaker: Speaker, role: string, asking: Asking): string {
  const { machine, labels, language, graph } = speaker
  const { sequences, skills } = machine.training
  const named = (named: { name: Parameters<typeof speakInput>[0] } | undefined, id: string) =>
    named ? speakInput(named.name, language, machine.sourceLanguage).text : id
  switch (asking.because) {
    case 'sequence':
      return fill(labels.planBySequence, {
        sequence: named(
          sequences.find(({ id }) => id === asking.sequence),
          asking.sequence,
        ),
      })
    case 'skill':
      return fill(labels.planBySkill, {
        skill: named(
          skills.find(({ id }) => id === asking.skill),
          asking.skill,
        ),
        level: asking.level,
      })
    case 'role':
      return fill(labels.planByRole, { role: roleName(speaker, role) })
    case 'need': {
      const page = graph.page(`lessons/${asking.of}`)
      return fill(labels.planByNeed, { lesson: page ? titleIn(page, language).text : asking.of })
    }
  }
}
