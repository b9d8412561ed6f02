import { cyclesOf } from './cycles.ts'
import type { Lesson } from './lesson.ts'
import { type Need, needsOf } from './need.ts'

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

/** The same for lessons by their numbers, of which `needs` gives those of each. Without those that a loop holds up. */
export function orderByNumber(needs: readonly (readonly number[])[]): number[] {
  const neededBy = needs.map((): number[] => [])
  needs.forEach((list, lesson) => {
    for (const need of list) neededBy[need]?.push(lesson)
  })
  const open = needs.map((list) => list.length)
  const ready = open.flatMap((count, lesson) => (count === 0 ? [lesson] : []))
  const order: number[] = []
  for (let lesson = ready.shift(); lesson !== undefined; lesson = ready.shift()) {
    order.push(lesson)
    for (const next of neededBy[lesson] ?? []) {
      const left = (open[next] ?? 0) - 1
      open[next] = left
      if (left === 0) insert(next, ready)
    }
  }
  return order
}

function insert(number: number, ascending: number[]): void {
  const place = ascending.findIndex((other) => other > number)
  ascending.splice(place < 0 ? ascending.length : place, 0, number)
}
