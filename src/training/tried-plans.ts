import { filledPlan } from './filled-plan.ts'
import { type Packing, type Plan, reversed } from './packing.ts'
import { plainPriorities } from './priorities.ts'
import { seededRandom } from './random.ts'

/** How many mixed priorities are tried, from either end. */
const mixes = 2000

/** The shortest plan of those that the plain priorities fill, from the first lesson on and from the last back. */
export function plainPlan(packing: Packing): Plan {
  const back = reversed(packing)
  const plans = [
    ...plainPriorities(packing).map((priority) => filledPlan(packing, priority)),
    ...plainPriorities(back).map((priority) => turned(filledPlan(back, priority))),
  ]
  return plans.reduce((best, plan) => (plan.length < best.length ? plan : best))
}

/** The shortest plan of those that seeded mixes of length, weight and chance fill. Stops at one of `enough` sessions. */
export function mixedPlan(packing: Packing, known: Plan, enough: number): Plan {
  const back = reversed(packing)
  const [forward, backward] = [mixer(packing), mixer(back)]
  let best = known
  for (let mix = 0; mix < mixes && best.length > enough; mix++) {
    const plans = [filledPlan(packing, forward()), turned(filledPlan(back, backward()))]
    for (const plan of plans) if (plan.length < best.length) best = plan
  }
  return best
}

function mixer(packing: Packing): () => number[] {
  const random = seededRandom(1)
  const [, minutes = [], weight = []] = plainPriorities(packing)
  const [longest, heaviest] = [Math.max(...minutes), Math.max(...weight)]
  return () => {
    const [ofLength, ofWeight, ofChance] = [random(), random(), random()]
    return minutes.map((length, lesson) => (ofLength * length) / longest + (ofWeight * (weight[lesson] ?? 0)) / heaviest + ofChance * random())
  }
}

function turned(plan: Plan): Plan {
  return [...plan].reverse().map((session) => [...session].reverse())
}
