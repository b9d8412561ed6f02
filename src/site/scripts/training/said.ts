import type { Entry, JournalProblem } from '../../../training/journal.ts'
import { noEntry } from '../../../training/journal.ts'
import { writeJournal } from '../../../training/journal-file.ts'
import type { TrainingRecord } from '../../../training/record.ts'
import type { LessonStatus } from '../../../training/status.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import { element } from '../dom.ts'
import { following, type StoreFault } from './open-store.ts'
import { saveFile } from './save-file.ts'
import { dayText, recordsOf, type TrainingPage, today } from './training-page.ts'

/** Shows what became of something, in place of what was said before, with what can be done about it. */
export function say(place: HTMLElement, text: string, acts: readonly { text: string; act: () => void }[] = [], isFault = false): void {
  const buttons = acts.map(({ text: label, act }) => {
    const button = element('button', { text: label })
    button.setAttribute('type', 'button')
    button.addEventListener('click', act)
    return button
  })
  place.classList.toggle('said-fault', isFault)
  place.replaceChildren(element('p', { text }), ...(buttons.length > 0 ? [element('p', { className: 'records-acts' }, ...buttons)] : []))
}

/** Says that something was recorded, and that the clock of this device is wrong where older records bear a later day. */
export async function sayRecorded(page: TrainingPage, place: HTMLElement, text: string): Promise<void> {
  const days = (await recordsOf(page)).flatMap((record) => ('date' in record ? [record.date] : []))
  const [last] = days.sort().reverse()
  const isBehind = last !== undefined && last > today()
  const warning = isBehind ? ` ${fill(page.words.recordClock, { today: dayText(today()), last: dayText(last) })}` : ''
  say(place, `${text}${warning}`, [], isBehind)
}

/** The first digits of a hash, to compare with paper. */
export const shortHash = (hash: string | undefined): string => (hash ?? noEntry).slice(0, 8)

export const recordsFileName = ({ machineId }: TrainingPage, last: Entry | undefined, ending = 'records.jsonl'): string =>
  `${machineId}-${today()}-${shortHash(last?.hash)}-${ending}`

export function problemText(words: LearningWords, problem: JournalProblem): string {
  const found = problem.wrong === 'sequence' ? String(problem.found) : ''
  const path = problem.wrong === 'record' ? problem.problem.path : ''
  return fill(words[`journal_${problem.wrong}`], { entry: problem.entry, found, path })
}

export function faultText(words: LearningWords, fault: StoreFault): string {
  if (fault.kind === 'changed') return fill(words.faultChanged, { problem: problemText(words, fault.problem) })
  if (fault.kind === 'blocked') return words.faultBlocked
  return fault.kind === 'full' ? words.faultFull : fill(words.faultBroken, { message: fault.message })
}

/**
 * Says a fault, and offers what was to be recorded as a file: behind the records that can be read, so that the file can be
 * taken over later; alone where there are none.
 */
export async function sayFault(page: TrainingPage, place: HTMLElement, fault: StoreFault, unrecorded: readonly TrainingRecord[] = []): Promise<void> {
  const { words, store } = page
  const read = await store.entries()
  const kept = 'fault' in read ? [] : read.entries
  const file = [...kept, ...following(kept[kept.length - 1], unrecorded)]
  const last = file[file.length - 1]
  const pending = { text: words.recordPending, act: () => saveFile(recordsFileName(page, last), writeJournal(file)) }
  const asKept = fault.kind === 'changed' ? fault.asKept : undefined
  const changed = { text: words.recordAsKept, act: () => saveFile(recordsFileName(page, undefined, 'changed-records.jsonl'), asKept ?? '') }
  say(place, faultText(words, fault), [...(unrecorded.length > 0 ? [pending] : []), ...(asKept === undefined ? [] : [changed])], true)
}

/** Where a person stands with a lesson, with the day to which it holds. */
export function statusText(words: LearningWords, { status, ends }: LessonStatus): string {
  const day = ends === undefined ? '' : dayText(ends)
  return status === 'ok' && day ? fill(words.status_okUntil, { ends: day }) : fill(words[`status_${status}`], { ends: day })
}
