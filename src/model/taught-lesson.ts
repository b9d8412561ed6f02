import type { Page } from './machine.ts'

/** What records of a lesson are held against: what `training/` takes as a `TaughtLesson`. */
export function taughtLesson({ name, frontmatter }: Page<'lessons'>) {
  const { revision, questions, practical, signOff, validMonths, retrains = 'major', history = [] } = frontmatter
  return {
    id: name,
    revision,
    isAssessed: questions !== undefined,
    needsSignOff: signOff !== undefined || practical !== undefined,
    ...(validMonths === undefined ? {} : { validMonths }),
    retrains,
    history: history.map(({ hash: _, ...change }) => change),
  }
}

/** The hash of what the current revision teaches, where the lesson states it. */
export function contentHash({ frontmatter: { revision, history = [] } }: Page<'lessons'>): string | undefined {
  return history.find((change) => change.revision === revision)?.hash
}
