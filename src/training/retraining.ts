import { isSamePerson } from './person.ts'
import { isLessonRecord, type LessonRecord, type TrainingRecord } from './record.ts'
import { type LessonStatus, statusOf } from './status.ts'
import type { ChangeKind, TaughtLesson } from './taught-lesson.ts'

/** Why a person has to take a lesson again, or one more. */
export type RetrainingReason =
  | { readonly why: 'new-role' }
  | { readonly why: 'changed'; readonly change: ChangeKind; readonly revision?: string; readonly date: string; readonly what?: string }
  | { readonly why: 'inspection'; readonly procedure: string; readonly date: string; readonly by: string; readonly reason: string }
  | { readonly why: 'revoked'; readonly date: string; readonly by: string; readonly reason: string }
  | { readonly why: 'lapsed'; readonly ended: string }

export interface Retraining {
  readonly person: string
  readonly lesson: string
  readonly reasons: readonly RetrainingReason[]
}

/** A person with the lessons that the roles ask for, now and before the role changed. */
export interface AskedPerson {
  readonly person: string
  readonly lessons: readonly string[]
  readonly lessonsBefore?: readonly string[]
}

export interface RetrainingQuestion {
  readonly people: readonly AskedPerson[]
  /** With the lockout procedures that each covers. */
  readonly lessons: readonly (TaughtLesson & { readonly procedures?: readonly string[] })[]
  readonly records: readonly TrainingRecord[]
  readonly today: string
  /** What a change of the machine brings that is in no revision of a lesson yet. */
  readonly changes?: readonly { readonly lesson: string; readonly change: ChangeKind; readonly date: string; readonly what?: string }[]
}

/**
 * Who has to be trained again in what, and why, in the order of the people and of the lessons asked of them. Whoever never
 * took a lesson that was asked before needs training, and no retraining: that is left out.
 */
export function retrainingOf(question: RetrainingQuestion): Retraining[] {
  const lessons = new Map(question.lessons.map((lesson) => [lesson.id, lesson]))
  return question.people.flatMap((asked) =>
    asked.lessons.flatMap((id) => {
      const lesson = lessons.get(id)
      const reasons = lesson ? reasonsFor(asked, lesson, question) : []
      return reasons.length > 0 ? [{ person: asked.person, lesson: id, reasons }] : []
    }),
  )
}

type Lesson = RetrainingQuestion['lessons'][number]

function reasonsFor(asked: AskedPerson, lesson: Lesson, question: RetrainingQuestion): RetrainingReason[] {
  const { person, lessonsBefore } = asked
  const found = statusOf({ lesson, records: question.records, person, today: question.today })
  const { status, record, ends, change } = found
  if (record?.event === 'revoked') return [revocation(record)]
  if (status === 'missing') return lessonsBefore && !lessonsBefore.includes(lesson.id) ? [{ why: 'new-role' }] : []
  if (!record || status === 'failed') return []
  const lapsed: RetrainingReason[] = status === 'expired' && ends !== undefined ? [{ why: 'lapsed', ended: ends }] : []
  const revised: RetrainingReason[] = change ? [{ why: 'changed', ...change }] : []
  return [...lapsed, ...revised, ...byMachine(lesson, record, question), ...byInspection(person, lesson, found, question)]
}

function byMachine(lesson: Lesson, record: LessonRecord, { changes = [], today }: RetrainingQuestion): RetrainingReason[] {
  const counts = (change: ChangeKind) => lesson.retrains === 'any' || (lesson.retrains === 'major' && change !== 'text')
  return changes
    .filter((it) => it.lesson === lesson.id && it.date <= today && record.date < it.date && counts(it.change))
    .map(({ lesson: _, ...change }) => ({ why: 'changed', ...change }))
}

/** An inspection shows gaps of what was learned before it. */
function byInspection(person: string, lesson: Lesson, { record }: LessonStatus, { records, today }: RetrainingQuestion): RetrainingReason[] {
  const taken = record ? records.indexOf(record) : -1
  return records.flatMap((it, index) => {
    if (it.event !== 'inspected' || it.date > today || !lesson.procedures?.includes(it.procedure)) return []
    const isNamed = it.retrain?.some((one) => isSamePerson(one, person)) ?? false
    const isAfter = record && (record.date > it.date || (record.date === it.date && taken > index))
    if (!isNamed || isAfter) return []
    return [{ why: 'inspection', procedure: it.procedure, date: it.date, by: it.by, reason: it.reason ?? '' }]
  })
}

function revocation({ date, by = '', reason = '' }: LessonRecord): RetrainingReason {
  return { why: 'revoked', date, by, reason }
}

/** Every person of whom there is a record of a lesson. */
export const peopleIn = (records: readonly TrainingRecord[]): string[] => [...new Set(records.filter(isLessonRecord).map(({ person }) => person))]
