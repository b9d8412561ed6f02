import type { Lesson } from './lesson.ts'
import { type Need, needsOf } from './need.ts'
import { orderByNumber } from './order-by-number.ts'

/**
 * The loops among the needs of lessons: of every knot (lessons that all need each other) its shortest loop, begun at the
 * lesson that the author put first. Of equally short ones the one that is found from the earlier lesson. A lesson that
 * merely needs one in a loop is in none.
 */
export function cyclesOf(lessons: readonly Lesson[]): Need[][] {
  const held = heldUp(lessons)
  const known = new Set(held.map(({ id }) => id))
  const needs = new Map(held.map((lesson) => [lesson.id, needsOf(lesson).filter((need) => known.has(need.needs))]))
  const told = new Set<string>()
  return held.flatMap(({ id }) => {
    const around = told.has(id) ? [] : knotOf(id, needs)
    for (const member of around) told.add(member)
    const members = held.filter((lesson) => around.includes(lesson.id))
    const loops = members.flatMap((member) => shortestLoop(member.id, needs) ?? [])
    const shortest = Math.min(...loops.map(({ length }) => length))
    return loops.filter(({ length }) => length === shortest).slice(0, 1)
  })
}

/** The lessons that are in a loop or need one that is. */
function heldUp(lessons: readonly Lesson[]): Lesson[] {
  const places = new Map(lessons.map(({ id }, place) => [id, place]))
  const free = new Set(orderByNumber(lessons.map((lesson) => needsOf(lesson).flatMap((need) => places.get(need.needs) ?? []))))
  return lessons.filter((_, place) => !free.has(place))
}

/** The lessons that need this one and are needed by it, itself among them; empty where no loop passes through it. */
function knotOf(id: string, needs: ReadonlyMap<string, readonly Need[]>): string[] {
  return [...reached(id, needs)].filter((other) => reached(other, needs).has(id))
}

/** What a lesson needs, over any number of steps. */
function reached(id: string, needs: ReadonlyMap<string, readonly Need[]>): Set<string> {
  const found = new Set<string>()
  const open = [id]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const { needs: next } of needs.get(at) ?? []) {
      if (!found.has(next)) open.push(next)
      found.add(next)
    }
  }
  return found
}

function shortestLoop(id: string, needs: ReadonlyMap<string, readonly Need[]>): [Need[]] | undefined {
  const ways: Need[][] = [[]]
  const seen = new Set<string>()
  for (let index = 0; index < ways.length; index++) {
    const way = ways[index] ?? []
    for (const need of needs.get(way[way.length - 1]?.needs ?? id) ?? []) {
      if (need.needs === id) return [[...way, need]]
      if (!seen.has(need.needs)) ways.push([...way, need])
      seen.add(need.needs)
    }
  }
  return undefined
}
