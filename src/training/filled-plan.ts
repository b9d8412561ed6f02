import { begunPlan, minutesOf, type Packing, type Plan } from './packing.ts'

/**
 * A plan made at one go: of the lessons that can come next and that the session still takes, the one with the highest
 * priority, of equal ones the author's earliest; where none is left, a new session. `begun` is kept as it is.
 */
export function filledPlan(packing: Packing, priority: readonly number[], begun: Plan = []): Plan {
  const { minutes, neededBy, signedOff, limitMinutes } = packing
  const { plan, sessionOf, isPlaced, open } = begunPlan(packing, begun)
  const ready: number[] = []
  for (let lesson = 0; lesson < minutes.length; lesson++) if (open[lesson] === 0 && !isPlaced(lesson)) ready.push(lesson)
  let load = minutesOf(plan[plan.length - 1] ?? [], packing)

  while (ready.length > 0) {
    const session = plan.length - 1
    let best = -1
    for (let index = 0; session >= 0 && index < ready.length; index++) {
      const lesson = ready[index] ?? 0
      if (load + (minutes[lesson] ?? 0) > limitMinutes || signedOff[lesson]?.some((need) => sessionOf[need] === session)) continue
      if (best < 0 || isAhead(lesson, ready[best] ?? 0, priority)) best = index
    }
    if (best < 0) {
      plan.push([])
      load = 0
      continue
    }
    const [lesson = 0] = ready.splice(best, 1)
    plan[session]?.push(lesson)
    sessionOf[lesson] = session
    load += minutes[lesson] ?? 0
    for (const next of neededBy[lesson] ?? []) {
      const left = (open[next] ?? 0) - 1
      open[next] = left
      if (left === 0) ready.push(next)
    }
  }
  return plan
}

function isAhead(lesson: number, other: number, priority: readonly number[]): boolean {
  const difference = (priority[lesson] ?? 0) - (priority[other] ?? 0)
  return difference > 0 || (difference === 0 && lesson < other)
}
