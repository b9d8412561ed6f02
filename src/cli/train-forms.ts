import type { Machine } from '../model/machine.ts'
import { speakInput } from '../model/words.ts'
import type { PlanLesson } from '../site/training/plan-lesson.ts'
import { planCountText, planNotes } from '../site/training/plan-notes.ts'
import { fill } from '../site/words/fill.ts'
import type { Labels } from '../site/words/labels.ts'
import type { SessionLimits } from '../training/session-minutes.ts'
import type { Sessions } from '../training/sessions.ts'
import type { HeldLessons } from './read-records.ts'

export interface PrintedPlan extends HeldLessons {
  machine: Machine
  role: Machine['training']['roles'][number]
  language: string
  labels: Labels
  limits: SessionLimits
  /** All lessons of the role, in the author's order. */
  asked: readonly PlanLesson[]
  done: ReadonlySet<string>
  plan: Sessions
}

/** The contract of `--format json`: fields are added, never renamed. */
export function planJson({ machine, role, person, limits, asked, done, plan, statuses }: PrintedPlan): string {
  const statusOf = new Map(statuses.map((it) => [it.lesson, it]))
  const record = {
    machine: machine.file.id,
    serial: machine.unit.serial,
    role: role.id,
    person,
    limits,
    sessions: plan.sessions,
    optimal: plan.optimal,
    lowerBound: plan.lowerBound,
    nearest: plan.nearest,
    done: asked.flatMap(({ taught }) => (done.has(taught.id) ? [taught.id] : [])),
    missing: asked.flatMap(({ taught }) => (done.has(taught.id) ? [] : [{ lesson: taught.id, status: 'missing', ...statusOf.get(taught.id) }])),
    lessons: asked.map(({ taught, title, minutes, needs, needsSignedOff, mode, level, why }) => {
      const session = plan.sessions.findIndex(({ lessons }) => lessons.includes(taught.id))
      return {
        id: taught.id,
        revision: taught.revision,
        title,
        minutes,
        mode,
        level,
        needs,
        needsSignedOff,
        why,
        session: session < 0 ? undefined : session + 1,
      }
    }),
  }
  return `${JSON.stringify(record, null, 2)}\n`
}

/** A row a lesson, in the order of the plan, as spreadsheets read it. */
export function planCsv({ asked, plan }: PrintedPlan): string {
  const lessonOf = new Map(asked.map((lesson) => [lesson.taught.id, lesson]))
  const rows = plan.sessions.flatMap(({ lessons, day }, session) =>
    lessons.flatMap((id, place) => {
      const lesson = lessonOf.get(id)
      if (!lesson) return []
      const { taught, title, minutes, mode, level, needs, needsSignedOff, why } = lesson
      return [[session + 1, day, place + 1, id, taught.revision, title, minutes, mode, level, needs.join(' '), needsSignedOff.join(' '), why]]
    }),
  )
  const headings = ['session', 'day', 'place', 'lesson', 'revision', 'title', 'minutes', 'mode', 'level', 'needs', 'needsSignedOff', 'why']
  return [headings, ...rows].map((row) => `${row.map((it) => cell(String(it ?? ''))).join(',')}\r\n`).join('')
}

const cell = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

/** The plan as a trainer pins it up: sessions with their lessons, how each is given, and why it stands there. */
export function planText(printed: PrintedPlan): string {
  const { machine, role, person, language, labels, asked, plan, limits } = printed
  const lessonOf = new Map(asked.map((lesson) => [lesson.taught.id, lesson]))
  const width = Math.max(0, ...plan.sessions.flatMap(({ lessons }) => lessons.map((id) => lessonOf.get(id)?.title.length ?? 0)))
  const lines = [
    fill(labels.planFor, { role: speakInput(role.name, language, machine.sourceLanguage).text }),
    `${machine.file.model}, ${labels.serial} ${machine.unit.serial}, ${labels.revision} ${machine.file.revision}`,
    ...(person ? [[person.name, `(${person.id})`].filter(Boolean).join(' ')] : []),
    ...plan.sessions.flatMap(({ lessons, minutes, day }, number) => [
      '',
      [fill(labels.planSession, { number: number + 1 }), ...(day ? [fill(labels.planDay, { day })] : []), fill(labels.minutes, { minutes })].join(
        ', ',
      ),
      ...lessons.flatMap((id) => {
        const lesson = lessonOf.get(id)
        if (!lesson) return []
        const minutes = fill(labels.minutes, { minutes: lesson.minutes })
        return [`  ${lesson.title.padEnd(width)}  ${minutes.padStart(7)}  ${planNotes(lesson, asked, labels).join(' · ')}`]
      }),
    ]),
    '',
    ...summary(printed, limits),
  ]
  return `${lines.join('\n')}\n`
}

function summary({ labels, asked, done, plan, statuses }: PrintedPlan, limits: SessionLimits): string[] {
  const titles = new Map(asked.map(({ taught, title }) => [taught.id, title]))
  const open = statuses.filter(({ lesson, status }) => status !== 'missing' && status !== 'ok' && !done.has(lesson))
  const isDone = asked.filter(({ taught }) => done.has(taught.id))
  if (asked.length === 0) return [labels.planNoLessons]
  return [
    ...(plan.sessions.length === 0 ? [labels.planNothing] : [planCountText(plan, asked, limits, labels)]),
    ...(isDone.length > 0 ? [fill(labels.planDone, { lessons: isDone.map(({ title }) => title).join(', ') })] : []),
    ...open.map(({ lesson, status, ends }) => `${titles.get(lesson)}: ${fill(labels[`status_${status}`], { ends: ends ?? '' })}`),
  ]
}
