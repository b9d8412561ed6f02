/** A lesson as the planning of training needs it. Ids are unique among the lessons that are planned together. */
export interface Lesson {
  id: string
  /** Whole minutes of teaching, above 0. */
  minutes: number
  /** Lessons that come before it; they may come earlier in the same session. */
  needs: readonly string[]
  /** Lessons that are signed off before it, so in an earlier session. */
  needsSignedOff: readonly string[]
}
