import type { Lesson } from '../../src/training/lesson.ts'

/** All orders of the numbers from 0 to below `count`, the ones that begin with small numbers first. */
export function orders(count: number): number[][] {
  if (count === 0) return [[]]
  const shorter = orders(count - 1)
  return Array.from({ length: count }, (_, first) =>
    shorter.map((rest) => [first, ...rest.map((number) => (number >= first ? number + 1 : number))]),
  ).flat()
}

/** The sessions of an order that is cut behind each place whose bit is set. */
function cut(order: readonly number[], cuts: number): number[][] {
  const sessions: number[][] = [[]]
  order.forEach((lesson, place) => {
    sessions[sessions.length - 1]?.push(lesson)
    if (place < order.length - 1 && (cuts >> place) & 1) sessions.push([])
  })
  return sessions
}

/** Straight from the definition: no need comes later, none to be signed off in the same session, none above the limit. */
export function isPlan(sessions: readonly (readonly string[])[], lessons: readonly Lesson[], limitMinutes: number): boolean {
  const taught = sessions.flat()
  const sessionOf = (id: string) => sessions.findIndex((session) => session.includes(id))
  const known = new Set(lessons.map(({ id }) => id))
  return (
    [...taught].sort().join() === [...known].sort().join() &&
    sessions.every(
      (ids) => ids.length > 0 && lessons.filter(({ id }) => ids.includes(id)).reduce((sum, it) => sum + it.minutes, 0) <= limitMinutes,
    ) &&
    lessons.every(
      ({ id, needs, needsSignedOff }) =>
        needs.every((need) => !known.has(need) || taught.indexOf(need) < taught.indexOf(id)) &&
        needsSignedOff.every((need) => !known.has(need) || sessionOf(need) < sessionOf(id)),
    )
  )
}

/** By trying every order with every cut: of the plans with the fewest sessions the first by its lessons, then by its sessions. */
export function bestByTrying(lessons: readonly Lesson[], limitMinutes: number): string[][] {
  let best: string[][] | undefined
  for (const order of orders(lessons.length)) {
    const found = bestCut(order, lessons, limitMinutes)
    if (found && (!best || found.length < best.length)) best = found
  }
  return best ?? []
}

function bestCut(order: readonly number[], lessons: readonly Lesson[], limitMinutes: number): string[][] | undefined {
  let best: { sessions: string[][]; filling: string } | undefined
  for (let cuts = 0; cuts < 2 ** Math.max(0, order.length - 1); cuts++) {
    const sessions = cut(order, cuts).map((session) => session.map((lesson) => lessons[lesson]?.id ?? ''))
    if ((best && sessions.length > best.sessions.length) || !isPlan(sessions, lessons, limitMinutes)) continue
    const filling = sessions.flatMap((session, number) => session.map(() => number)).join()
    if (!best || sessions.length < best.sessions.length || filling < best.filling) best = { sessions, filling }
  }
  return best?.sessions
}
