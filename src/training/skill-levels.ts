import { isSamePerson } from './person.ts'
import { isLessonRecord, type LessonRecord, type TrainingRecord } from './record.ts'
import { type Level, trainerLevel } from './skills.ts'
import { statusOf } from './status.ts'
import type { TaughtLesson } from './taught-lesson.ts'

export interface SkillLesson extends TaughtLesson {
  /** The level of the skill that it leads to; 1 where nothing is said. */
  readonly level?: Level
}

export interface SkillQuestion {
  /** The lessons of one skill. */
  readonly lessons: readonly SkillLesson[]
  readonly records: readonly TrainingRecord[]
  readonly today: string
  /** Who may sign off without level 4, as the employer has named them. */
  readonly qualified?: readonly string[]
}

/** From this level on a person of level 4, or a qualified one, has to have signed off. */
const signedFrom = 3

/**
 * The level of each person in one skill: the highest of a lesson that is taken with all below it. A sign-off for level 3 and 4
 * counts when its signer was qualified or had level 4 on that day: two who sign off for each other gain nothing.
 */
export function skillLevels(question: SkillQuestion): Map<string, Level> {
  const own = new Set(question.lessons.map(({ id }) => id))
  const records = question.records.filter(isLessonRecord).filter(({ lesson, date }) => own.has(lesson) && date <= question.today)
  const byPerson = new Map<string, LessonRecord[]>()
  for (const record of records) {
    const others = byPerson.get(record.person)
    if (others) others.push(record)
    else byPerson.set(record.person, [record])
  }
  const trusted = trustedSignOffs(question, records, byPerson)
  return new Map([...byPerson].map(([person, its]) => [person, levelOf(question, its, person, question.today, trusted)]))
}

/** Day by day, since trust in a signer rests on sign-offs of that day and before. */
function trustedSignOffs(
  question: SkillQuestion,
  records: readonly LessonRecord[],
  byPerson: ReadonlyMap<string, LessonRecord[]>,
): Set<LessonRecord> {
  const trusted = new Set<LessonRecord>()
  const signed = records.filter(({ event, by }) => (event === 'signed-off' || event === 'waived') && by !== undefined)
  for (const day of [...new Set(signed.map(({ date }) => date))].sort()) {
    let open = signed.filter(({ date }) => date === day)
    for (let before = -1; before !== open.length; ) {
      before = open.length
      for (const record of open) if (mayTrain(question, record.by ?? '', day, byPerson, trusted)) trusted.add(record)
      open = open.filter((record) => !trusted.has(record))
    }
  }
  return trusted
}

function mayTrain(
  question: SkillQuestion,
  signer: string,
  day: string,
  byPerson: ReadonlyMap<string, LessonRecord[]>,
  trusted: ReadonlySet<LessonRecord>,
): boolean {
  if (question.qualified?.some((it) => isSamePerson(it, signer))) return true
  return levelOf(question, byPerson.get(signer) ?? [], signer, day, trusted) === trainerLevel
}

function levelOf(
  { lessons }: SkillQuestion,
  records: readonly LessonRecord[],
  person: string,
  day: string,
  trusted: ReadonlySet<LessonRecord>,
): Level {
  const levels = [...new Set(lessons.map(levelOfLesson))].sort()
  let reached: Level = 0
  for (const level of levels) {
    const here = lessons.filter((lesson) => levelOfLesson(lesson) === level)
    if (!here.every((lesson) => ofTrusted(lesson, records, person, day, trusted).status === 'ok')) break
    reached = level
  }
  return reached
}

/** At level 3 and 4 sign-offs that count for nothing are left out. */
function ofTrusted(lesson: SkillLesson, records: readonly LessonRecord[], person: string, today: string, trusted: ReadonlySet<LessonRecord>) {
  const isTrusted = (it: LessonRecord) => (it.event !== 'signed-off' && it.event !== 'waived') || trusted.has(it)
  if (levelOfLesson(lesson) < signedFrom) return statusOf({ lesson, records, person, today })
  return statusOf({ lesson: { ...lesson, needsSignOff: true }, records: records.filter(isTrusted), person, today })
}

const levelOfLesson = ({ level }: SkillLesson): Level => level ?? 1
