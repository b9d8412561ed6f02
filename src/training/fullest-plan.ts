import { begunPlan, minutesOf, type Packing, type Plan } from './packing.ts'

/** How many ways to fill a session are looked at. */
const waysASession = 400

/**
 * A plan of which each session is as full as it can be of what can come next (after T. R. Hoffmann 1963, from memory); of
 * equally full ones the first that is found by priority. `begun` is kept, and its last session is filled up.
 */
export function fullestPlan(packing: Packing, priority: readonly number[], begun: Plan = []): Plan {
  const { minutes, neededBy, signedOff, limitMinutes } = packing
  const { plan, sessionOf, isPlaced, open } = begunPlan(packing, begun)
  const byPriority = (one: number, other: number) => (priority[other] ?? 0) - (priority[one] ?? 0) || one - other
  let left = minutes.filter((_, lesson) => !isPlaced(lesson)).length

  for (let session = Math.max(0, plan.length - 1); left > 0; session++) {
    const kept = plan[session] ?? []
    const chosen: number[] = []
    let best: number[] = []
    let bestLoad = -1
    let ways = 0
    const keptMinutes = minutesOf(kept, packing)
    const waits = (lesson: number) => signedOff[lesson]?.some((need) => sessionOf[need] === session) ?? false
    const search = (candidates: readonly number[], load: number): void => {
      if (load > bestLoad) {
        best = [...chosen]
        bestLoad = load
      }
      for (let index = 0; index < candidates.length && bestLoad < limitMinutes && ways < waysASession; index++) {
        const lesson = candidates[index] ?? 0
        const more = load + (minutes[lesson] ?? 0)
        if (more > limitMinutes || waits(lesson)) continue
        ways += 1
        sessionOf[lesson] = session
        chosen.push(lesson)
        const ready: number[] = []
        for (const next of neededBy[lesson] ?? []) {
          const still = (open[next] ?? 0) - 1
          open[next] = still
          if (still === 0) ready.push(next)
        }
        search([...candidates.slice(index + 1), ...ready].sort(byPriority), more)
        for (const next of neededBy[lesson] ?? []) open[next] = (open[next] ?? 0) + 1
        chosen.pop()
        sessionOf[lesson] = -1
      }
    }
    search(minutes.flatMap((_, lesson) => (open[lesson] === 0 && !isPlaced(lesson) ? [lesson] : [])).sort(byPriority), keptMinutes)
    for (const lesson of best) {
      sessionOf[lesson] = session
      for (const next of neededBy[lesson] ?? []) open[next] = (open[next] ?? 0) - 1
    }
    plan[session] = [...kept, ...best]
    left -= best.length
  }
  return plan
}
