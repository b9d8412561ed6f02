import { readFileSync } from 'node:fs'
import { type Touch, touchedLessons } from '../changes/touched-lessons.ts'
import { taughtLesson } from '../model/taught-lesson.ts'
import { type ChangesReport, nameOf, sentenceOf } from '../report/changes-words.ts'
import type { ToldPerson, ToldReason, ToldRetraining } from '../report/retraining.ts'
import { compare } from '../source/place.ts'
import { readJournal } from '../training/journal-file.ts'
import { journalProblemText } from '../training/journal-problem.ts'
import { isLessonRecord, namesOf } from '../training/record.ts'
import { type Retraining, retrainingOf } from '../training/retraining.ts'
import { UsageError } from './options.ts'
import type { Revisions } from './revisions.ts'
import { today } from './today.ts'

/** Who has to be trained again by the records in a file, or why that is not told. A journal that was changed is refused: by it nobody is named or left out. */
export function retrainingIn(path: string, { old, now }: Revisions, report: ChangesReport): { retraining: ToldRetraining } | { refused: string } {
  const read = readJournal(readText(path))
  if ('problem' in read) return { refused: `${path}: ${journalProblemText(read.problem)}; nobody is named by records that do not hold` }
  if (now.machines.length === 0)
    return { refused: 'a release holds no lessons: name the folder of the new revision to see who has to be trained again' }
  const records = read.entries.map(({ body }) => body)
  const lessons = new Map(
    now.machines.flatMap(({ pages }) => pages.flatMap((page) => (page.collection === 'lessons' ? [[page.name, page] as const] : []))),
  )
  // A revision that holds from a later day on is judged on that day.
  const day = compare(today(), report.now.date) < 0 ? report.now.date : today()
  // A revision of the same day as the one before says nothing of when its changes came: they are of today.
  const date = compare(report.old.date, report.now.date) < 0 ? report.now.date : day
  const touches = touchedLessons(report.changes, old.machines, now.machines)
  const taught = [...lessons.values()].map(taughtLesson)
  const asked = taught.map(({ id }) => id)
  const changes = touches.map((touch) => ({ lesson: touch.lesson, change: touch.calls, date, what: whatOf(touch) }))
  // Each person by the person's own records: a plant has many people, and each of them few.
  const byPerson = Map.groupBy(records.filter(isLessonRecord), ({ person }) => person)
  const found = [...byPerson].flatMap(([person, own]) =>
    retrainingOf({ people: [{ person, lessons: asked }], lessons: taught, records: own, today: day, changes }),
  )
  const names = namesOf(records)
  const told = [...Map.groupBy(found, ({ person }) => person)].map(
    ([person, own]): ToldPerson => ({
      person,
      name: names.get(person),
      lessons: own.flatMap((it) => {
        const page = lessons.get(it.lesson)
        const reasons = reasonsOf(it)
        return page && reasons.length > 0 ? [{ lesson: it.lesson, title: page.frontmatter.title, revision: page.frontmatter.revision, reasons }] : []
      }),
    }),
  )
  const unknown = records.filter(isLessonRecord).flatMap(({ lesson }) => (lessons.has(lesson) ? [] : [lesson]))
  return {
    retraining: {
      file: path,
      entries: records.length,
      hash: read.entries.at(-1)?.hash.slice(0, 8),
      day,
      people: told.filter((it) => it.lessons.length > 0),
      unknownLessons: [...new Set(unknown)].sort(compare),
    },
  }
}

function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8')
  } catch (error) {
    throw new UsageError(`${path} cannot be read: ${error instanceof Error ? error.message : String(error)}`)
  }
}

function reasonsOf({ reasons }: Retraining): ToldReason[] {
  return reasons.flatMap((reason) =>
    reason.why === 'changed' ? [{ change: reason.change, revision: reason.revision, date: reason.date, what: reason.what }] : [],
  )
}

function whatOf({ by }: Touch): string {
  if ('page' in by) return `page \`${by.page}\` ${by.isGone ? 'is gone' : 'has another text'}`
  return `${by.change.thing} \`${nameOf(by.change)}\` ${sentenceOf(by.change)}`
}
