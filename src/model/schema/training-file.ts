import { z } from 'zod'
import { identifier, words } from './common.ts'
import { roleDuties } from './training.ts'

const minutes = z.number().int().positive()

/** The schema of `training.yaml`. */
export const trainingFile = z.strictObject({
  roles: z.array(
    z.strictObject({
      id: identifier,
      name: words,
      ...roleDuties,
      trains: z.boolean().optional().describe('Whether people of this role train others'),
      needs: z.record(identifier, z.number().int().min(1).max(4)).optional().describe('Which skill at which level'),
    }),
  ),
  skills: z
    .array(
      z.strictObject({
        id: identifier,
        name: words,
        people: z.number().int().positive().optional().describe('How many people the machine needs who do it alone (level 3)'),
        lessons: z.array(identifier).min(1).describe('Lessons that lead to it, each to its own level'),
      }),
    )
    .optional()
    .describe('What people can do'),
  sessions: z
    .strictObject({
      minutes: minutes.describe('Longest session, in minutes'),
      breakMinutes: minutes.optional().describe('Length of a break'),
      breakAfterMinutes: minutes.optional().describe('Longest teaching without a break'),
      dayMinutes: minutes.optional().describe('Most minutes of training in a day'),
    })
    .optional()
    .describe('How training is cut into sessions where nobody says otherwise'),
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
