import { namesOf, type TrainingRecord } from '../../../training/record.ts'
import type { Person } from './learner.ts'
import { recordsOf, type TrainingPage } from './training-page.ts'

/** A record of a name for each person who is not known by it yet. */
export async function withNames(page: TrainingPage, people: readonly Person[], ...records: readonly TrainingRecord[]): Promise<TrainingRecord[]> {
  const names = namesOf(await recordsOf(page))
  const named = people
    .filter(({ id, name }) => name !== '' && names.get(id) !== name)
    .map(({ id, name }): TrainingRecord => ({ event: 'named', person: id, name }))
  return [...named, ...records]
}
