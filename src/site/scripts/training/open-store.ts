import { type Entry, entryAfter, type JournalProblem, verifyJournal } from '../../../training/journal.ts'
import { addedBy, readJournal, writeJournal } from '../../../training/journal-file.ts'
import type { TrainingRecord } from '../../../training/record.ts'
import { type DatabaseFault, inOneStep, openDatabase } from './records-database.ts'

/** Why nothing was read or written. `changed`: somebody changed the records on this device; `asKept` is all of them, a line each. */
export type StoreFault = DatabaseFault | { readonly kind: 'changed'; readonly problem: JournalProblem; readonly asKept: string }

type Answer<T> = Promise<T | { fault: StoreFault }>

/**
 * The records of a machine on this device. Every call checks the whole chain; a fault is an answer and no throw, and after
 * one nothing has been written.
 */
export interface RecordStore {
  entries(): Answer<{ entries: readonly Entry[] }>
  /** The last entry; its hash is what is written on paper. */
  head(): Answer<{ head: Entry | undefined }>
  /** Adds records behind the last one, all or none, whatever other tabs do. */
  append(...bodies: readonly TrainingRecord[]): Answer<{ added: readonly Entry[] }>
  /** Takes over a journal that goes on from this one. */
  import(text: string): Answer<{ added: readonly Entry[] } | { problem: JournalProblem }>
  /** The journal as a `.jsonl` file. */
  export(): Answer<{ text: string }>
  /** Forgets all records, if the last one is still `head` (its hash, undefined for none) or if they were changed. */
  wipe(head: string | undefined): Answer<{ wiped: boolean }>
  /** Calls back when another tab has written. */
  onChange(listener: () => void): void
}

export function openStore(machineId: string): RecordStore {
  const signal = `${machineId}.training-records`
  let opening: ReturnType<typeof openDatabase> | undefined
  async function step<T>(mode: 'readonly' | 'readwrite', plan: Parameters<typeof inOneStep<T>>[2]): Answer<{ result: T }> {
    opening ??= openDatabase(machineId)
    const database = await opening
    if ('fault' in database) return database
    const answer = await inOneStep(database, mode, plan)
    // A connection that the browser has closed is opened again at the next call.
    if ('fault' in answer && answer.fault.kind === 'broken') opening = undefined
    return answer
  }
  /** A step on entries whose chain holds. */
  async function onChain<T>(
    plan: (entries: readonly Entry[]) => { add?: readonly Entry[]; result: T },
    mode: 'readonly' | 'readwrite' = 'readwrite',
  ) {
    const answer = await step<{ fault: StoreFault } | { result: T }>(mode, (kept) => {
      const read = verifyJournal(kept)
      if ('problem' in read) return { result: { fault: { kind: 'changed', problem: read.problem, asKept: linesOf(kept) } } }
      const { add = [], result } = plan(read.entries)
      return { add, result: { result } }
    })
    return 'fault' in answer ? answer : answer.result
  }
  const tellOthers = (hash: string) => {
    try {
      localStorage.setItem(signal, hash)
    } catch {
      // Other tabs then see it when they come to the front.
    }
  }

  return {
    async entries() {
      const answer = await onChain((entries) => ({ result: entries }), 'readonly')
      return 'fault' in answer ? answer : { entries: answer.result }
    },
    async head() {
      const answer = await onChain((entries) => ({ result: entries[entries.length - 1] }), 'readonly')
      return 'fault' in answer ? answer : { head: answer.result }
    },
    async append(...bodies) {
      const answer = await onChain((entries) => {
        const add = following(entries[entries.length - 1], bodies)
        return { add, result: add }
      })
      if ('fault' in answer) return answer
      tellOthers(answer.result[answer.result.length - 1]?.hash ?? '')
      return { added: answer.result }
    },
    async import(text) {
      const theirs = readJournal(text)
      if ('problem' in theirs) return theirs
      const answer = await onChain((entries) => {
        const result = addedBy(entries, theirs.entries)
        return { result, ...('added' in result ? { add: result.added } : {}) }
      })
      if ('fault' in answer) return answer
      if ('added' in answer.result) tellOthers(answer.result.added[answer.result.added.length - 1]?.hash ?? '')
      return answer.result
    },
    async export() {
      const answer = await onChain((entries) => ({ result: writeJournal(entries) }), 'readonly')
      return 'fault' in answer ? answer : { text: answer.result }
    },
    async wipe(head) {
      const answer = await step('readwrite', (kept) => {
        const read = verifyJournal(kept)
        const wiped = 'problem' in read || read.entries[read.entries.length - 1]?.hash === head
        return { clear: wiped, result: wiped }
      })
      if ('fault' in answer) return answer
      if (answer.result) tellOthers('')
      return { wiped: answer.result }
    },
    onChange(listener) {
      window.addEventListener('storage', ({ key }) => key === signal && listener())
      document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && listener())
    },
  }
}

/** Entries that records become behind the last one. */
export function following(last: Entry | undefined, bodies: readonly TrainingRecord[]): Entry[] {
  const added: Entry[] = []
  for (const body of bodies) added.push(entryAfter(added[added.length - 1] ?? last, body))
  return added
}

/** Entries that were changed, as they are kept. */
const linesOf = (kept: readonly unknown[]): string => kept.map((it) => `${JSON.stringify(it)}\n`).join('')
