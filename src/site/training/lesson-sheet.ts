/** What the script of a lesson's page knows of the lesson, in the language of the page. */
export interface LessonSheet {
  lesson: string
  revision: string
  contentHash?: string
  passPercent: number
  questions: SheetQuestion[]
  /** What the learner shows to the person who judges it. */
  practical: string[]
  needsSignOff: boolean
}

export interface SheetQuestion {
  ask: string
  /** Several answers are right. */
  several: boolean
  answers: { text: string; right: boolean; because?: string }[]
}
