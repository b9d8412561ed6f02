import { orderByNumber } from './order-by-number.ts'
import type { Packing } from './packing.ts'

/** What can go first, each a number a lesson: the author's order, length, weight, all that need it, those that need it at once. */
export function plainPriorities(packing: Packing): number[][] {
  const behind = lessonsBehind(packing)
  return [
    packing.minutes.map((_, lesson) => -lesson),
    [...packing.minutes],
    positionalWeights(packing),
    behind.map(({ size }) => size),
    packing.neededBy.map(({ length }) => length),
  ]
}

/** Minutes of each lesson and of all that come behind it (W. B. Helgeson, D. P. Birnie 1961, from memory). */
export function positionalWeights(packing: Packing): number[] {
  const { minutes } = packing
  return lessonsBehind(packing).map((behind, lesson) => [...behind].reduce((sum, other) => sum + (minutes[other] ?? 0), minutes[lesson] ?? 0))
}

function lessonsBehind(packing: Packing): ReadonlySet<number>[] {
  const behind = packing.minutes.map(() => new Set<number>())
  for (const lesson of orderByNumber(packing.neededBy)) {
    for (const next of packing.neededBy[lesson] ?? []) {
      behind[lesson]?.add(next)
      for (const further of behind[next] ?? []) behind[lesson]?.add(further)
    }
  }
  return behind
}
