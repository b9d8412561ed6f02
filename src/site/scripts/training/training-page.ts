import { isSamePerson } from '../../../training/person.ts'
import { namesOf, type TrainingRecord } from '../../../training/record.ts'
import { peopleIn } from '../../../training/retraining.ts'
import type { LearningWords } from '../../words/learning.ts'
import type { RecordStore } from './open-store.ts'

/** What the scripts of a page share. */
export interface TrainingPage {
  readonly words: LearningWords
  readonly machineId: string
  readonly store: RecordStore
}

/** The records of this device; none where they cannot be read, which is said where somebody records something. */
export async function recordsOf({ store }: TrainingPage): Promise<TrainingRecord[]> {
  const answer = await store.entries()
  return 'fault' in answer ? [] : answer.entries.map(({ body }) => body)
}

/** Everyone of whom there are records, by id, with the name or the id itself. */
export function knownPeople(records: readonly TrainingRecord[]): Map<string, string> {
  const names = namesOf(records)
  const ids = [...new Set([...names.keys(), ...peopleIn(records)])].sort()
  return new Map(ids.map((id) => [id, names.get(id) ?? id]))
}

/** The id by which a person is known here, or the id as it was typed. */
export const spelledAs = (id: string, people: ReadonlyMap<string, string>): string =>
  [...people.keys()].find((known) => isSamePerson(known, id)) ?? id

/** Today on the clock of this device, `YYYY-MM-DD`. */
export function today(): string {
  const now = new Date()
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-')
}

/** A day as people of this language write it. */
export const dayText = (day: string): string => new Date(`${day}T00:00:00`).toLocaleDateString(document.documentElement.lang, { dateStyle: 'medium' })
