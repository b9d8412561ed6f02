import { z } from 'zod'
import { identifier, words } from './common.ts'

const outputTags = z.array(identifier).min(1).describe('Tags of what is moved or switched')

const preconditions = {
  mode: words.describe('Mode of the machine, as its selector calls it'),
  guards: z
    .enum(['closed', 'enabling-device', 'locked-out'])
    .describe('State of the guards: closed; open, with an enabling device in the hand; or open, with the motion locked out'),
  login: words.describe('Level of login that lets a person do it'),
  clear: words.describe('Who is clear of what moves, and who makes sure of it'),
}

/** What has to hold before outputs are switched by hand from the controller, the screen or a valve. */
export const outputs = z.strictObject({ tags: outputTags, ...preconditions }).describe('What has to hold before outputs are switched by hand')

/** The same in a lesson: one about a technology is about its device, and names no tags. */
export const lessonOutputs = z
  .strictObject({ tags: outputTags.optional(), ...preconditions })
  .describe('What has to hold before outputs are switched by hand; without tags it is about the device of the lesson')

export type Outputs = z.infer<typeof lessonOutputs>
