import type { LessonSheet } from '../../training/lesson-sheet.ts'
import { load, save } from '../store.ts'
import { officeAround } from './report-to/office.ts'

/** The answers that were chosen, a list a question; questions that are still open have none. */
export type Answers = readonly (readonly number[])[]

/** As with readings: after this time the answers are of somebody else. */
const keptForMs = 12 * 60 * 60 * 1000

const keyOf = ({ lesson, revision }: LessonSheet) => ['fettle', document.documentElement.dataset.site, 'quiz', lesson, revision].join('.')

/** Answers of before, and when the last of them was given; outside a package another person may have given them. */
export interface KeptAnswers {
  answers: Answers
  atMs?: number
}

export function keptAnswers(sheet: LessonSheet): KeptAnswers {
  try {
    const office = officeAround(window)
    const { atMs, answers } = JSON.parse((office ? office.answers.get(keyOf(sheet)) : load(keyOf(sheet))) ?? '{}')
    const ageMs = Date.now() - Number(atMs)
    const isWhole = Array.isArray(answers) && answers.length <= sheet.questions.length && answers.every((it, index) => isChoice(it, sheet, index))
    return isWhole && ageMs >= 0 && ageMs < keptForMs ? { answers, ...(office ? {} : { atMs: Number(atMs) }) } : { answers: [] }
  } catch {
    // What another program left under this key is not ours.
    return { answers: [] }
  }
}

export function keepAnswers(sheet: LessonSheet, answers: Answers): void {
  const kept = answers.length === 0 ? undefined : JSON.stringify({ atMs: Date.now(), answers })
  const office = officeAround(window)
  if (office) office.answers.set(keyOf(sheet), kept ?? '{}')
  else save(keyOf(sheet), kept)
}

function isChoice(value: unknown, { questions }: LessonSheet, index: number): boolean {
  const count = questions[index]?.answers.length ?? 0
  return Array.isArray(value) && value.length > 0 && value.every((it) => Number.isInteger(it) && it >= 0 && it < count)
}
