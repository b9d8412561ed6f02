import type { ShownLesson } from './shown-lesson.ts'

/** A lesson of a plan, in the language of the page: plain data, for the script as well. */
export interface PlanLesson extends Omit<ShownLesson, 'href'> {
  /** Why the role is asked to take it, in words. */
  why: string
  mode?: 'read' | 'demonstrate' | 'practise' | 'assess'
  /** Level of its skill that it leads to. */
  level?: number
}
