/** What a change of a lesson was: its words alone, the procedure that it teaches, or a hazard that is new. */
export type ChangeKind = 'text' | 'procedure' | 'new-hazard'

/** A revision of a lesson, from its day on. */
export interface LessonChange {
  readonly revision: string
  readonly date: string
  readonly change: ChangeKind
  readonly what?: string
}

/** A lesson as records are held against it. */
export interface TaughtLesson {
  readonly id: string
  readonly revision: string
  /** Ends with questions: to have read it is no evidence. */
  readonly isAssessed: boolean
  /** Another person has to sign off. */
  readonly needsSignOff: boolean
  readonly validMonths?: number
  /** Which changes call for new training: none, those of the procedure or its hazards, or all. */
  readonly retrains: 'never' | 'major' | 'any'
  /** In the order of the revisions. */
  readonly history: readonly LessonChange[]
}

/** The changes up to a day that call for new training. */
export function retrainingChanges({ retrains, history }: Pick<TaughtLesson, 'retrains' | 'history'>, today: string): LessonChange[] {
  return history.filter(({ change, date }) => date <= today && (retrains === 'any' || (retrains === 'major' && change !== 'text')))
}
