import type { JournalProblem } from './journal.ts'
import type { RecordProblem } from './read-record.ts'

const recordTexts: Readonly<Record<RecordProblem['wrong'], string>> = {
  missing: 'is missing',
  unknown: 'is not part of a record',
  event: 'is no event of a record',
  text: 'is no text in one line',
  day: 'is no day like 2026-01-31',
  people: 'is no list of different people',
  score: 'is no score like {"of":5,"right":4}',
  object: 'is no record',
  'not-included': 'names a person who was not included',
}

/** `entry 0: content changed`, in English. */
export function journalProblemText(problem: JournalProblem): string {
  return `entry ${problem.entry}: ${whatText(problem)}`
}

function whatText(problem: JournalProblem): string {
  switch (problem.wrong) {
    case 'sequence':
      return `sequence ${problem.found}`
    case 'record':
      return `\`${['body', problem.problem.path].filter(Boolean).join('.')}\` ${recordTexts[problem.problem.wrong]}`
    case 'content':
      return 'content changed'
    case 'previous':
      return 'does not follow the entry before'
    case 'shape':
      return 'is no entry of a journal'
    case 'unreadable':
      return 'is not written as a journal writes it'
    case 'cut-off':
      return 'its line is cut off'
    case 'diverges':
      return 'differs from this journal'
  }
}
