import { beginningsOf } from './beginnings.ts'
import { exchangedPlan } from './exchanged-plan.ts'
import type { Lesson } from './lesson.ts'
import { lowerBound } from './lower-bound.ts'
import { nearerPlan } from './nearer-plan.ts'
import { nearestPlan } from './nearest-plan.ts'
import type { Need } from './need.ts'
import { orderOf } from './order.ts'
import { minutesOf, type Packing, type Plan, packingOf, reversed } from './packing.ts'
import { limitOf, minutesWithBreaks, type SessionLimits } from './session-minutes.ts'
import { mixedPlan, plainPlan } from './tried-plans.ts'

export interface Session {
  /** With its breaks. */
  minutes: number
  /** In the order in which they are taught. */
  lessons: string[]
  /** From 1; only where a day has a limit. */
  day?: number
}

export interface Sessions {
  sessions: Session[]
  /** No plan has fewer sessions. */
  optimal: boolean
  /** No plan has fewer sessions than this. */
  lowerBound: number
  /** Of all plans with as few sessions none is nearer to the author's order. Where it is false, that was not proven. */
  nearest: boolean
}

/** A lesson that no session takes, with the minutes of teaching that one has. */
export interface TooLong {
  lesson: string
  minutes: number
  limitMinutes: number
}

/** What the search for the fewest sessions may try: half a second on a computer of today. */
const searchSteps = 1_500_000

/**
 * Lessons in the author's order, cut into sessions: as few as can be, and of all plans with as few the one nearest to the
 * author's order. Nearest is, at each place from the first on, the earliest of the author's lessons with which a plan as
 * short is still possible. What is searched is counted in steps, so that the answer does not depend on the computer;
 * where they do not suffice, the best plan found is given with the least number of sessions that any plan needs. Days
 * are filled with the sessions in their order.
 *
 * A need of a lesson that is not among them counts as met: what is done already is left out.
 */
export function sessionsOf(lessons: readonly Lesson[], limits: SessionLimits): Sessions | { tooLong: TooLong[] } | { cycles: Need[][] } {
  const limitMinutes = limitOf(limits)
  const order = orderOf(lessons)
  if ('cycles' in order && order.cycles.length > 0) return { cycles: order.cycles }
  const tooLong = lessons.filter(({ minutes }) => minutes > limitMinutes)
  if (tooLong.length > 0) return { tooLong: tooLong.map(({ id, minutes }) => ({ lesson: id, minutes, limitMinutes })) }

  const packing = packingOf(lessons, limitMinutes)
  const { plan, bound, nearest } = shortestPlan(packing)
  const sessions = plan.map((session) => ({
    minutes: minutesWithBreaks(minutesOf(session, packing), limits),
    lessons: session.flatMap((lesson) => lessons[lesson]?.id ?? []),
  }))
  return { sessions: withDays(sessions, limits), optimal: plan.length === bound, lowerBound: bound, nearest }
}

function shortestPlan(packing: Packing): { plan: Plan; bound: number; nearest: boolean } {
  if (packing.minutes.length === 0) return { plan: [], bound: 0, nearest: true }
  const budget = { steps: searchSteps }
  const back = reversed(packing)
  for (let sessions = lowerBound(packing); ; sessions++) {
    const endings = beginningsOf(back, sessions, budget)
    if (!endings) {
      const found = mixedPlan(packing, plainPlan(packing), sessions)
      return { plan: exchangedPlan(packing, nearerPlan(packing, found)), bound: sessions, nearest: false }
    }
    const plan = nearestPlan(packing, sessions, endings)
    if (plan) return { plan, bound: sessions, nearest: true }
  }
}

function withDays(sessions: Session[], { dayMinutes }: SessionLimits): Session[] {
  if (dayMinutes === undefined) return sessions
  let [day, used] = [1, 0]
  return sessions.map((session) => {
    if (used + session.minutes > dayMinutes) {
      day += 1
      used = 0
    }
    used += session.minutes
    return { ...session, day }
  })
}
