/** A lesson on the way of a learner. */
export interface PathLesson {
  readonly id: string
  readonly needs: readonly string[]
  /** Have to be done, and so signed off, in an earlier session. */
  readonly needsSignedOff: readonly string[]
  readonly isDone: boolean
}

export interface PathStep {
  readonly id: string
  /** `open`: can be taken now; `waits`: for the lessons in `missing`. */
  readonly state: 'done' | 'open' | 'waits'
  readonly missing: readonly string[]
}

export interface LearningPath {
  readonly steps: readonly PathStep[]
  /** The first lesson that is open, what it rests on, and the later lessons that need it. Undefined where all is done. */
  readonly next?: { readonly id: string; readonly after: readonly string[]; readonly neededBy: readonly string[] }
}

/** What a learner has done, can take now and has to wait with; lessons in the order of the path. A need that is not on the path does not hold it up. */
export function learningPath(lessons: readonly PathLesson[]): LearningPath {
  const done = new Map(lessons.map(({ id, isDone }) => [id, isDone]))
  const needsOf = ({ needs, needsSignedOff }: PathLesson) => [...new Set([...needsSignedOff, ...needs])].filter((id) => done.has(id))
  const steps = lessons.map((lesson): PathStep => {
    const missing = needsOf(lesson).filter((id) => !done.get(id))
    return { id: lesson.id, state: lesson.isDone ? 'done' : missing.length > 0 ? 'waits' : 'open', missing }
  })
  const first = lessons[steps.findIndex(({ state }) => state === 'open')]
  if (!first) return { steps }
  const neededBy = lessons.filter((it) => !it.isDone && needsOf(it).includes(first.id)).map(({ id }) => id)
  return { steps, next: { id: first.id, after: needsOf(first), neededBy } }
}
