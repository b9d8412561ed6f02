import type { Beginnings } from './beginnings.ts'
import { extender } from './extended-beginning.ts'
import { hasMember, isDisjoint, isWithin, type NumberSet, numberSet, withMember } from './number-set.ts'
import type { Packing, Plan } from './packing.ts'

/**
 * Of all plans of so many sessions the one nearest to the author's order: at each place, from the first on, stands the
 * earliest of the author's that still leaves such a plan, in the earliest session that takes it. `endings` are the
 * beginnings of the reversed packing. Undefined where there is no such plan.
 */
export function nearestPlan(packing: Packing, sessions: number, endings: Beginnings): Plan | undefined {
  const count = packing.minutes.length
  const needs = packing.needs.map((list) => numberSet(count, list))
  const none = numberSet(count)
  const extend = extender(packing)
  const all = packing.minutes.map((_, lesson) => lesson)
  const parted = partedBy(packing)
  const plan: number[][] = [[]]
  let [set, beginning] = [none, { sessions: 1, load: 0, open: none }]

  while (all.some((lesson) => !hasMember(set, lesson))) {
    const next = all.find((lesson) => {
      if (hasMember(set, lesson) || !isWithin(needs[lesson] ?? none, set)) return false
      const more = withMember(set, lesson)
      const after = extend(beginning, lesson)
      const rest = numberSet(
        count,
        all.filter((other) => !hasMember(more, other)),
      )
      return endings(rest).some((ending) => {
        const shared = after.load + ending.load <= packing.limitMinutes && !parted(after.open, ending.open)
        return after.sessions + ending.sessions - (shared ? 1 : 0) <= sessions
      })
    })
    if (next === undefined) return undefined
    set = withMember(set, next)
    beginning = extend(beginning, next)
    if (beginning.sessions > plan.length) plan.push([])
    plan[plan.length - 1]?.push(next)
  }
  return plan
}

/** Whether a lesson of the second set waits for the signature of one of the first. */
function partedBy(packing: Packing): (before: NumberSet, after: NumberSet) => boolean {
  const signsOff = packing.signsOff.map((list) => numberSet(packing.minutes.length, list))
  return (before, after) => signsOff.some((waiting, lesson) => hasMember(before, lesson) && !isDisjoint(waiting, after))
}
