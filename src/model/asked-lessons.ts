import type { Graph } from './graph.ts'
import type { Machine, Page } from './machine.ts'

type Lesson = Page<'lessons'>

/** Why a role is asked to take a lesson: the lesson names the role; a sequence of the role has it; it leads to a skill that the role needs; another lesson needs it. */
export type Asking =
  | { because: 'role' }
  | { because: 'sequence'; sequence: string }
  | { because: 'skill'; skill: string; level: number }
  | { because: 'need'; of: string }

/** A lesson that a role is asked to take, with the first reason for it. */
export interface AskedLesson {
  lesson: Lesson
  asking: Asking
}

/**
 * The lessons that a role is asked to take, in the author's order: its sequences, then what leads to its skills, then the
 * other lessons that name it; last what these need and none of them asks for. A lesson that does not exist is left out.
 */
export function askedLessons({ training }: Pick<Machine, 'training'>, graph: Pick<Graph, 'pagesIn' | 'page'>, role: string): AskedLesson[] {
  const asked = new Map<string, AskedLesson>()
  const ask = (name: string, asking: Asking) => {
    const lesson = graph.page(`lessons/${name}`)
    if (lesson?.collection === 'lessons' && !asked.has(name)) asked.set(name, { lesson, asking })
  }
  for (const { id, role: of, lessons } of training.sequences)
    if (of === role) for (const name of lessons) ask(name, { because: 'sequence', sequence: id })
  for (const [skill, level] of Object.entries(training.roles.find(({ id }) => id === role)?.needs ?? {}))
    for (const name of training.skills.find(({ id }) => id === skill)?.lessons ?? []) {
      const lesson = graph.page(`lessons/${name}`)
      if (lesson?.collection === 'lessons' && (lesson.frontmatter.level ?? 0) <= level) ask(name, { because: 'skill', skill, level })
    }
  for (const { name, frontmatter } of graph.pagesIn('lessons')) if (frontmatter.roles?.includes(role)) ask(name, { because: 'role' })
  for (const { lesson } of asked.values()) for (const need of needsOf(lesson)) ask(need, { because: 'need', of: lesson.name })
  return [...asked.values()]
}

/** All lessons that come before a lesson, in the same session or in an earlier one. */
export function needsOf({ frontmatter: { needs = [], needsSignedOff = [] } }: Lesson): string[] {
  return [...needs, ...needsSignedOff]
}
