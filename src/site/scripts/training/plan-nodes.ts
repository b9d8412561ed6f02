import type { SessionLimits } from '../../../training/session-minutes.ts'
import type { sessionsOf } from '../../../training/sessions.ts'
import type { PlanLesson } from '../../training/plan-lesson.ts'
import { planCountText, planNotes } from '../../training/plan-notes.ts'
import type { PlanningLesson, PlanningRole } from '../../training/planning-sheet.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import type { PlanningWords } from '../../words/planning.ts'
import { element } from '../dom.ts'
import type { Person } from './learner.ts'

/** A plan with all that its papers say. */
export interface PlannedRole {
  role: PlanningRole
  /** In the author's order. */
  asked: readonly (PlanningLesson & PlanLesson)[]
  plan: ReturnType<typeof sessionsOf>
  limits: SessionLimits
  person: Person | undefined
  /** The day of each session; none where no first day is chosen. */
  days: readonly string[]
  words: PlanningWords & LearningWords
}

/** The plan as sessions, or why there is none. */
export function planNodes(planned: PlannedRole): HTMLElement[] {
  const { role, asked, plan, limits, person, words } = planned
  const head = element('p', {
    className: 'plan-head',
    text: [fill(words.planFor, { role: role.name }), ...(person ? [personText(person)] : [])].join(' · '),
  })
  if ('cycles' in plan) throw new Error('a loop of needs has passed the check')
  if ('tooLong' in plan) return plan.tooLong.map((it) => element('p', { className: 'said-fault', text: tooLongText(it, asked, words) }))
  if (plan.sessions.length === 0) return [head, element('p', { className: 'plan-count', text: words.planNothing })]
  const count = [planCountText(plan, asked, limits, words), ...(plan.nearest ? [] : [words.planNotNearest])].join(' ')
  return [
    head,
    element('p', { className: 'plan-count', text: count }),
    element('ol', { className: 'plan-sessions' }, ...sessionNodes(planned, plan.sessions)),
  ]
}

type Planned = Extract<PlannedRole['plan'], { sessions: unknown }>['sessions']

function sessionNodes({ asked, days, words }: PlannedRole, sessions: Planned): HTMLElement[] {
  return sessions.map((session, index) =>
    element(
      'li',
      { className: 'plan-session' },
      element('h3', { text: sessionText(session, index, days, words) }),
      element(
        'ol',
        { className: 'rows' },
        ...session.lessons.flatMap((id) => {
          const lesson = asked.find(({ taught }) => taught.id === id)
          return lesson ? [lessonNode(lesson, asked, words)] : []
        }),
      ),
    ),
  )
}

function lessonNode(lesson: PlannedRole['asked'][number], asked: PlannedRole['asked'], words: PlannedRole['words']): HTMLElement {
  const row = element(
    'a',
    { className: 'row' },
    element(
      'span',
      { className: 'row-main' },
      element('span', { text: lesson.title, ...(lesson.lang ? { lang: lesson.lang } : {}) }),
      element('small', { text: planNotes(lesson, asked, words).join(' · ') }),
    ),
    element('small', { className: 'row-side', text: fill(words.planMinutesShort, { minutes: lesson.minutes }) }),
  )
  row.setAttribute('href', lesson.href)
  return element('li', {}, row)
}

/** `Session 2 · 45 min · 1 Dec 2026`. */
export function sessionText({ minutes, day }: Planned[number], index: number, days: readonly string[], words: PlanningWords): string {
  const date = days[index]
  return [
    fill(words.planSession, { number: index + 1 }),
    fill(words.planMinutesShort, { minutes }),
    ...(day === undefined || date !== undefined ? [] : [fill(words.planDay, { day })]),
    ...(date === undefined ? [] : [weekdayText(date)]),
  ].join(' · ')
}

const weekdayText = (day: string): string =>
  new Date(`${day}T00:00:00`).toLocaleDateString(document.documentElement.lang, { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' })

export const personText = ({ id, name }: Person): string => (name === id ? id : `${name} (${id})`)

function tooLongText(
  { lesson, minutes, limitMinutes }: { lesson: string; minutes: number; limitMinutes: number },
  asked: PlannedRole['asked'],
  words: PlanningWords,
) {
  return fill(words.planTooLong, { lesson: asked.find(({ taught }) => taught.id === lesson)?.title ?? lesson, minutes, limit: limitMinutes })
}
