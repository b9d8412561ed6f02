import type { Place } from '../source/place.ts'
import type { TrainingFile } from './schema/training-file.ts'

/** `training.yaml`, with the places of its values. */
export interface Training extends TrainingFile {
  skills: NonNullable<TrainingFile['skills']>
  placeOf(path: readonly (string | number)[]): Place
}
