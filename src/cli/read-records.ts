import { existsSync, readFileSync } from 'node:fs'
import { readJournal } from '../training/journal-file.ts'
import { journalProblemText } from '../training/journal-problem.ts'
import { namesOf } from '../training/record.ts'
import { peopleIn } from '../training/retraining.ts'
import { type LessonStatus, statusOf } from '../training/status.ts'
import type { TaughtLesson } from '../training/taught-lesson.ts'
import { type Options, UsageError } from './options.ts'

/** Where the person of `--records` stands with each lesson; without records with none. */
export interface HeldLessons {
  person?: { id: string; name?: string }
  statuses: readonly ({ lesson: string } & Pick<LessonStatus, 'status' | 'ends'>)[]
}

/** Reads `--records` and `--person`. `refused` says in one line, with its place, why a journal does not hold. */
export function heldLessons(lessons: readonly TaughtLesson[], options: Options, today: string): HeldLessons | { refused: string } {
  const file = options.get('records')
  if (file === undefined) {
    if (options.has('person')) throw new UsageError('--person takes --records with it')
    return { statuses: [] }
  }
  if (!existsSync(file)) throw new UsageError(`there is no file \`${file}\``)
  const read = readJournal(readFileSync(file, 'utf8'))
  if ('problem' in read) return { refused: `${file}:${read.problem.entry + 1}:1: error: ${journalProblemText(read.problem)}` }
  const records = read.entries.map(({ body }) => body)
  const id = personOf(peopleIn(records), file, options.get('person'))
  const name = namesOf(records).get(id)
  const statuses = lessons.map((lesson) => {
    const { status, ends } = statusOf({ lesson, records, person: id, today })
    return { lesson: lesson.id, status, ...(ends === undefined ? {} : { ends }) }
  })
  return { person: { id, ...(name === undefined ? {} : { name }) }, statuses }
}

function personOf(people: readonly string[], file: string, asked: string | undefined): string {
  const has = people.length > 0 ? `it has ${[...people].sort().join(', ')}` : 'it has none'
  if (asked !== undefined && !people.includes(asked)) throw new UsageError(`\`${file}\` has no record of \`${asked}\`; ${has}`)
  const [only, ...others] = people
  const person = asked ?? (others.length === 0 ? only : undefined)
  if (person === undefined) throw new UsageError(`--person is missing: \`${file}\` is not about one person; ${has}`)
  return person
}
