import { z } from 'zod'
import { identifier, words } from './common.ts'

/** The schema of `training.yaml`. */
export const trainingFile = z.strictObject({
  roles: z.array(z.strictObject({ id: identifier, name: words })),
  sequences: z.array(
    z.strictObject({
      id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
      name: words,
      role: identifier,
      lessons: z.array(identifier).min(1).describe('Lesson ids in the order the author would teach them'),
    }),
  ),
})
export type TrainingFile = z.infer<typeof trainingFile>
