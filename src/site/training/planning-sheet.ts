import type { SessionLimits } from '../../training/session-minutes.ts'
import type { PlanLesson } from './plan-lesson.ts'

/** What the script of the planning page knows, in the language of the page: plain data. */
export interface PlanningSheet {
  limits: SessionLimits
  /** Every lesson that a role or a skill asks for, once. */
  lessons: PlanningLesson[]
  roles: PlanningRole[]
  skills: PlanningSkill[]
}

export interface PlanningLesson extends Omit<PlanLesson, 'why'> {
  href: string
  /** How hard it is to read, in words; undefined where it is too short to tell. */
  reading?: string
  /** It serves a duty of lockout: 29 CFR 1910.147(c)(7). */
  isLockout: boolean
}

export interface PlanningRole {
  id: string
  name: string
  /** Level by skill. */
  needs: Readonly<Record<string, number>>
  /** In the author's order, each with the reason for it. */
  asked: { lesson: string; why: string }[]
}

export interface PlanningSkill {
  id: string
  name: string
  people?: number
  lessons: string[]
}
