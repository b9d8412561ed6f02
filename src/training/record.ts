/** What can happen to a person and a lesson. */
export const lessonEvents = ['assigned', 'completed', 'passed', 'failed', 'signed-off', 'waived', 'revoked'] as const
export type LessonEvent = (typeof lessonEvents)[number]

/** One thing that happened to one person and one lesson. Persons are ids; days are `YYYY-MM-DD`. */
export interface LessonRecord {
  readonly event: LessonEvent
  readonly person: string
  readonly name?: string
  readonly lesson: string
  /** Revision of the lesson that was taken. */
  readonly revision: string
  readonly contentHash?: string
  readonly date: string
  /** Answers that were right, of all. */
  readonly score?: { readonly right: number; readonly of: number }
  /** Who signed off, waived or revoked. */
  readonly by?: string
  readonly reason?: string
}

/** A lockout procedure was inspected while people used it: 29 CFR 1910.147(c)(6). */
export interface InspectionRecord {
  readonly event: 'inspected'
  readonly procedure: string
  readonly revision?: string
  /** Who was included. */
  readonly people: readonly string[]
  readonly by: string
  readonly date: string
  /** Those of them who have to be trained again, and why: (c)(7)(iii)(B). */
  readonly retrain?: readonly string[]
  readonly reason?: string
}

/** What a person is called, from here on. */
export interface NameRecord {
  readonly event: 'named'
  readonly person: string
  readonly name: string
}

/** A body of the journal. */
export type TrainingRecord = LessonRecord | InspectionRecord | NameRecord

export const isLessonRecord = (record: TrainingRecord): record is LessonRecord => record.event !== 'inspected' && record.event !== 'named'

/** The last name that the records give each person. */
export function namesOf(records: readonly TrainingRecord[]): Map<string, string> {
  const names = new Map<string, string>()
  for (const record of records) if ('person' in record && record.name !== undefined) names.set(record.person, record.name)
  return names
}
