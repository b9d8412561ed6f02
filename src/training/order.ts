import { cyclesOf } from './cycles.ts'
import type { Lesson } from './lesson.ts'
import { type Need, needsOf } from './need.ts'
import { orderByNumber } from './order-by-number.ts'

/**
 * The order in which lessons can be taught, as near to the author's as it can be: at each place the earliest of the
 * author's whose needs are met. Otherwise every need of a lesson that is not among them, and each loop (`cyclesOf`).
 */
export function orderOf(lessons: readonly Lesson[]): { order: string[] } | { cycles: Need[][]; unknown: Need[] } {
  const places = new Map(lessons.map(({ id }, place) => [id, place]))
  const needs = lessons.map(needsOf)
  const unknown = needs.flat().filter((need) => !places.has(need.needs))
  const order = orderByNumber(needs.map((list) => list.flatMap((need) => places.get(need.needs) ?? [])))
  if (order.length < lessons.length) return { cycles: cyclesOf(lessons), unknown }
  return unknown.length > 0 ? { cycles: [], unknown } : { order: order.flatMap((place) => lessons[place]?.id ?? []) }
}
