import type { SessionLimits } from '../../training/session-minutes.ts'
import type { Sessions } from '../../training/sessions.ts'
import { fill } from '../words/fill.ts'
import type { LearningWords } from '../words/learning.ts'
import type { PlanningWords } from '../words/planning.ts'
import type { PlanLesson } from './plan-lesson.ts'

type Words = PlanningWords & LearningWords

/** How a lesson is given, after which it comes, and why it is in the plan. */
export function planNotes({ mode, needs, needsSignedOff, why }: PlanLesson, all: readonly PlanLesson[], words: Words): string[] {
  const titleOf = (id: string) => fill(words.planQuoted, { title: all.find(({ taught }) => taught.id === id)?.title ?? id })
  const after = [
    ...needsSignedOff.map((id) => fill(words.planSignedOff, { lesson: titleOf(id) })),
    ...needs.filter((id) => !needsSignedOff.includes(id)).map(titleOf),
  ]
  return [...(mode ? [words[`mode_${mode}`]] : []), ...(after.length > 0 ? [fill(words.planAfter, { lessons: after.join(', ') })] : []), why]
}

/** How long the plan is, and whether it could be shorter. */
export function planCountText({ sessions, optimal, lowerBound }: Sessions, all: readonly PlanLesson[], limits: SessionLimits, words: Words): string {
  const taught = all.filter(({ taught }) => sessions.some(({ lessons }) => lessons.includes(taught.id)))
  const counted = (count: number, one: string, several: string) => (count === 1 ? one : fill(several, { count }))
  const said = fill(words.planCount, {
    lessons: counted(taught.length, words.planLessonsOne, words.planLessons),
    sessions: counted(sessions.length, words.planSessionsOne, words.planSessions),
    limit: limits.minutes,
    minutes: taught.reduce((sum, { minutes }) => sum + minutes, 0),
  })
  return `${said} ${optimal ? words.planOptimal : fill(words.planBound, { bound: lowerBound })}`
}
