import type { Page } from './machine.ts'

/** What the planning of training takes of a lesson: `training/` takes it as a `Lesson`. */
export function plannedLesson({ name, frontmatter: { minutes, needs = [], needsSignedOff = [] } }: Page<'lessons'>) {
  return { id: name, minutes, needs, needsSignedOff }
}
