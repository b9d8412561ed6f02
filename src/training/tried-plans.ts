import { filledPlan } from './filled-plan.ts'
import { fullestPlan } from './fullest-plan.ts'
import { type Packing, type Plan, reversed } from './packing.ts'
import { plainPriorities } from './priorities.ts'
import { seededRandom } from './random.ts'

/** How many mixed priorities are tried, from either end. */
const mixes = 300

/** The shortest plan of those that the plain priorities fill, from the first lesson on and from the last back. */
export function plainPlan(packing: Packing): Plan {
  const back = reversed(packing)
  const plans = [
    ...plainPriorities(packing).map((priority) => filledPlan(packing, priority)),
    ...plainPriorities(back).map((priority) => turned(filledPlan(back, priority))),
  ]
  return plans.reduce((best, plan) => (plan.length < best.length ? plan : best))
}

/** The shortest plan of those that are filled by seeded mixes of length, weight and chance, lesson by lesson and session by session. Stops at one of `enough` sessions. */
export function mixedPlan(packing: Packing, known: Plan, enough: number): Plan {
  const back = reversed(packing)
  const [forward, backward] = [mixer(packing), mixer(back)]
  let best = known
  for (let mix = 0; mix < mixes && best.length > enough; mix++) {
    const [ahead, behind] = [forward(), backward()]
    const plans = [filledPlan(packing, ahead), fullestPlan(packing, ahead), turned(filledPlan(back, behind)), turned(fullestPlan(back, behind))]
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
