import { addMonths } from './months.ts'
import { isSamePerson } from './person.ts'
import { isLessonRecord, type LessonRecord, type TrainingRecord } from './record.ts'
import { type LessonChange, retrainingChanges, type TaughtLesson } from './taught-lesson.ts'

/** From the worst to the best: of several records that stand, the best counts. */
export const statuses = ['missing', 'failed', 'not-signed-off', 'self-signed', 'expired', 'outdated', 'ok'] as const
export type Status = (typeof statuses)[number]

export interface LessonStatus {
  readonly status: Status
  /** The record that decided: a result, a waiver, or what took it away. */
  readonly record?: LessonRecord
  readonly signOff?: LessonRecord
  /** The first day on which it no longer holds: the day of expiry is itself expired. */
  readonly ends?: string
  /** The first change since then that calls for new training, whatever the status. */
  readonly change?: LessonChange
}

export interface StatusQuestion {
  readonly lesson: TaughtLesson
  /** In the order of the journal. */
  readonly records: readonly TrainingRecord[]
  readonly person: string
  /** Records of later days do not count yet. */
  readonly today: string
}

/**
 * Where a person stands with a lesson. A failure or a revocation takes away what came before it. A sign-off confirms results
 * of its day and of days before. A waiver stands for a result with its sign-off by whoever gave it.
 */
export function statusOf({ lesson, records, person, today }: StatusQuestion): LessonStatus {
  const own = records
    .filter(isLessonRecord)
    .filter((it) => it.lesson === lesson.id && it.person === person && it.date <= today)
    .sort((one, other) => (one.date < other.date ? -1 : Number(one.date > other.date)))
  const standing = own.slice(own.reduce((from, { event }, index) => (event === 'failed' || event === 'revoked' ? index : from), 0))
  const results = standing.filter(({ event }) => event === 'passed' || event === 'waived' || (event === 'completed' && !lesson.isAssessed))
  const signOffs = standing.filter(({ event }) => event === 'signed-off')
  const best = results.map((record) => ofResult(record, signOffs, lesson, today)).reduce(better, undefined)
  if (best) return best
  const [last] = standing
  if (last?.event === 'failed') return { status: 'failed', record: last }
  return last?.event === 'revoked' ? { status: 'missing', record: last } : { status: 'missing' }
}

/** Of two that are equally good the later one. */
function better(one: LessonStatus | undefined, other: LessonStatus): LessonStatus {
  return one && statuses.indexOf(one.status) > statuses.indexOf(other.status) ? one : other
}

function ofResult(record: LessonRecord, signOffs: readonly LessonRecord[], lesson: TaughtLesson, today: string): LessonStatus {
  const ends = lesson.validMonths === undefined ? {} : { ends: addMonths(record.date, lesson.validMonths) }
  const later = signOffs.filter(({ date }) => date >= record.date)
  const isOwn = ({ by, person }: LessonRecord) => by === undefined || isSamePerson(by, person)
  const signOff = record.event === 'waived' ? record : (later.find((it) => !isOwn(it)) ?? later[0])
  const change = firstChangeSince(record, lesson, today)
  const found = { record, ...(signOff && signOff !== record ? { signOff } : {}), ...ends, ...(change ? { change } : {}) }
  if (!signOff && lesson.needsSignOff) return { status: 'not-signed-off', ...found }
  if (signOff && isOwn(signOff) && (lesson.needsSignOff || record.event === 'waived')) return { status: 'self-signed', ...found }
  if (ends.ends !== undefined && today >= ends.ends) return { status: 'expired', ...found }
  return { status: change ? 'outdated' : 'ok', ...found }
}

/** A change is missed by a record that is older, and by one of a revision before it, whatever its day. */
function firstChangeSince(record: LessonRecord, lesson: TaughtLesson, today: string): LessonChange | undefined {
  const taken = lesson.history.findIndex(({ revision }) => revision === record.revision)
  const isMissed = (change: LessonChange) => record.date < change.date || (taken !== -1 && lesson.history.indexOf(change) > taken)
  return retrainingChanges(lesson, today).find(isMissed)
}
