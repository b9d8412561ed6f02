import type { Lesson } from './lesson.ts'
import { needsOf } from './need.ts'

/**
 * Lessons that are to be cut into sessions, by their numbers in the author's order. The lists give, for each lesson, what
 * it needs and what needs it; `signedOff` and `signsOff` the same for those that want another session.
 */
export interface Packing {
  minutes: readonly number[]
  needs: readonly (readonly number[])[]
  neededBy: readonly (readonly number[])[]
  signedOff: readonly (readonly number[])[]
  signsOff: readonly (readonly number[])[]
  /** Minutes of teaching that a session takes. */
  limitMinutes: number
}

/** Lessons by number: the sessions in their order, the lessons of each in theirs. */
export type Plan = readonly (readonly number[])[]

/** A need of a lesson that is not among them counts as met. */
export function packingOf(lessons: readonly Lesson[], limitMinutes: number): Packing {
  const places = new Map(lessons.map(({ id }, place) => [id, place]))
  const numbers = (lesson: Lesson, strictOnly: boolean) =>
    needsOf(lesson).flatMap((need) => (strictOnly && need.in === 'needs' ? [] : (places.get(need.needs) ?? [])))
  const needs = lessons.map((lesson) => numbers(lesson, false))
  const signedOff = lessons.map((lesson) => numbers(lesson, true))
  const minutes = lessons.map((lesson) => lesson.minutes)
  const all = inAuthorsOrder(minutes, needs, signedOff)
  return { minutes, needs: all, neededBy: turned(all), signedOff, signsOff: turned(signedOff), limitMinutes }
}

/** The same lessons, taught from the last to the first. */
export function reversed(packing: Packing): Packing {
  const { needs, neededBy, signedOff, signsOff } = packing
  return { ...packing, needs: neededBy, neededBy: needs, signedOff: signsOff, signsOff: signedOff }
}

export function minutesOf(lessons: readonly number[], { minutes }: Packing): number {
  return lessons.reduce((sum, lesson) => sum + (minutes[lesson] ?? 0), 0)
}

/**
 * Lessons that can take each other's place in every plan (as long, needing and needed by the same) are put in the author's
 * order by a need more. No plan is lost by it but for exchanges of these, and the search has less to try.
 */
function inAuthorsOrder(minutes: readonly number[], needs: number[][], signedOff: number[][]): number[][] {
  const lists = [needs, turned(needs), signedOff, turned(signedOff)]
  const last = new Map<string, number>()
  return minutes.map((length, lesson) => {
    const alike = JSON.stringify([length, ...lists.map((list) => [...(list[lesson] ?? [])].sort((a, b) => a - b))])
    const before = last.get(alike)
    last.set(alike, lesson)
    return [...(needs[lesson] ?? []), ...(before === undefined ? [] : [before])]
  })
}

function turned(lists: readonly (readonly number[])[]): number[][] {
  const back = lists.map((): number[] => [])
  lists.forEach((list, from) => {
    for (const to of list) back[to]?.push(from)
  })
  return back
}

/** A plan that is being filled: where its lessons are, and how many needs of each of the others are open. */
export interface BegunPlan {
  plan: number[][]
  /** The session of each lesson; -1 where it is in none. */
  sessionOf: Int32Array
  isPlaced(lesson: number): boolean
  open: number[]
}

/** `begun` is copied and kept as it is. */
export function begunPlan({ minutes, needs }: Packing, begun: Plan): BegunPlan {
  const plan = begun.map((session) => [...session])
  const sessionOf = new Int32Array(minutes.length).fill(-1)
  plan.forEach((session, index) => {
    for (const lesson of session) sessionOf[lesson] = index
  })
  const isPlaced = (lesson: number) => (sessionOf[lesson] ?? -1) >= 0
  const open = begun.length === 0 ? needs.map(({ length }) => length) : needs.map((list) => list.filter((need) => !isPlaced(need)).length)
  return { plan, sessionOf, isPlaced, open }
}
