import { orderByNumber } from './order-by-number.ts'
import { minutesOf, type Packing, type Plan } from './packing.ts'

/** How many changes are looked at: some tenths of a second. */
const mostTried = 20_000

/**
 * The plan after exchanges of two lessons, and moves of one into time that a session has left, each of which brings it nearer
 * to the author's order: at the first place that changes an earlier lesson of the author's stands. No session is added.
 */
export function exchangedPlan(packing: Packing, plan: Plan): Plan {
  let known = inAuthorsOrder(packing, plan)
  let tried = 0
  for (let place = 0; place < packing.minutes.length && tried < mostTried; place++) {
    const taught = known.flat()
    const here = taught[place] ?? 0
    const earlier = taught.slice(place + 1).filter((lesson) => lesson < here)
    for (const lesson of earlier.sort((one, other) => one - other)) {
      tried += 1
      const next = [exchanged(known, here, lesson), moved(known, here, lesson)]
        .filter((it) => isWorkable(packing, it))
        .map((it) => inAuthorsOrder(packing, it))
        .find((it) => isNearer(it.flat(), taught))
      if (!next) continue
      known = next
      // What came here may stand at an earlier place of its session.
      place -= 1 + (known.find((session) => session.includes(lesson))?.length ?? 0)
      break
    }
    place = Math.max(-1, place)
  }
  return known
}

const exchanged = (plan: Plan, one: number, other: number): Plan =>
  plan.map((session) => session.map((lesson) => (lesson === one ? other : lesson === other ? one : lesson)))

/** The second lesson in the session of the first. */
const moved = (plan: Plan, one: number, other: number): Plan =>
  plan
    .map((session) => [...session.filter((lesson) => lesson !== other), ...(session.includes(one) ? [other] : [])])
    .filter(({ length }) => length > 0)

/** Whether no session is too long, and none holds what has to come later. */
function isWorkable(packing: Packing, plan: Plan): boolean {
  const sessionOf = new Map(plan.flatMap((session, index) => session.map((lesson) => [lesson, index] as const)))
  const at = (lesson: number) => sessionOf.get(lesson) ?? 0
  return (
    plan.every((session) => minutesOf(session, packing) <= packing.limitMinutes) &&
    packing.needs.every((needs, lesson) => needs.every((need) => at(need) <= at(lesson))) &&
    packing.signedOff.every((needs, lesson) => needs.every((need) => at(need) < at(lesson)))
  )
}

function inAuthorsOrder({ needs }: Packing, plan: Plan): Plan {
  return plan.map((session) => {
    const lessons = [...session].sort((one, other) => one - other)
    const order = orderByNumber(lessons.map((lesson) => (needs[lesson] ?? []).map((need) => lessons.indexOf(need)).filter((place) => place >= 0)))
    return order.flatMap((place) => lessons[place] ?? [])
  })
}

function isNearer(one: readonly number[], other: readonly number[]): boolean {
  const different = one.findIndex((lesson, place) => lesson !== other[place])
  return different >= 0 && (one[different] ?? 0) < (other[different] ?? 0)
}
