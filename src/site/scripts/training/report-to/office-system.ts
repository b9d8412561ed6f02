import type { LessonResult } from '../../../../training/packages/result.ts'

/** What became of what was told to the training system of the office. */
export type Told =
  | { told: 'recorded'; passed?: boolean | undefined }
  /** It was taken before, or the system wants nothing of this session. */
  | { told: 'kept' }
  /** It was not taken, with what the system said. It may be told again. */
  | { told: 'refused'; reason: string }

/** The training system of the office while a lesson is open in it, whatever it speaks. */
export interface OfficeSystem {
  /** Before anything else. */
  start(): Promise<Told>
  report(result: LessonResult): Promise<Told>
  /** A short text that is handed back when the lesson is opened again, such as where the learner is. */
  keep(text: string): Promise<Told>
  kept(): string
  /** Nothing can be told afterwards. `durationS`: of the whole session, in seconds. */
  finish(durationS: number): Promise<Told>
  /** Where the system wants the learner to go afterwards. */
  returnAddress?(): string | undefined
}

export const recorded: Told = { told: 'recorded' }
export const kept: Told = { told: 'kept' }
export const refused = (reason: string): Told => ({ told: 'refused', reason })
