import { filledPlan } from './filled-plan.ts'
import { minutesOf, type Packing, type Plan } from './packing.ts'
import { plainPriorities } from './priorities.ts'

/**
 * A plan with no more sessions that is nearer to the author's order: at each place the earliest lesson from which some
 * filling still ends in time. Less than `nearestPlan` can do, but for any number of lessons.
 */
export function nearerPlan(packing: Packing, plan: Plan): Plan {
  const priorities = plainPriorities(packing)
  let known = plan
  let begun: Plan = []
  for (let place = 0; place < packing.minutes.length; place++) {
    const wanted = known.flat()[place] ?? 0
    const placed = new Set(begun.flat())
    for (let lesson = 0; lesson < packing.minutes.length; lesson++) {
      if (placed.has(lesson) || (packing.needs[lesson] ?? []).some((need) => !placed.has(need))) continue
      const next = withLesson(packing, begun, lesson)
      const whole = lesson === wanted ? known : priorities.map((it) => filledPlan(packing, it, next)).find(({ length }) => length <= plan.length)
      if (!whole) continue
      known = whole
      begun = next
      break
    }
  }
  return begun
}

/** The plan with one lesson more, in its last session where that takes it. */
function withLesson(packing: Packing, plan: Plan, lesson: number): Plan {
  const last = plan[plan.length - 1] ?? []
  const fits = plan.length > 0 && minutesOf([...last, lesson], packing) <= packing.limitMinutes
  if (!fits || packing.signedOff[lesson]?.some((need) => last.includes(need))) return [...plan, [lesson]]
  return [...plan.slice(0, -1), [...last, lesson]]
}
