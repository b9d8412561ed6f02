/** Least working pressure over precharge, and highest over precharge, of a bladder accumulator. Source: one maker's guide. */
const leastOverPrecharge = 1.1
const highestOverPrecharge = 4

interface Pressures {
  prechargePa: number | undefined
  lowestPressurePa: number | undefined
  highestPressurePa: number | undefined
  /** Highest pressure over precharge that the maker of this accumulator allows. */
  makersRatio?: number | undefined
}

export interface BrokenLimit {
  limit: 'lowest' | 'highest'
  /** The working pressure must be at least, or at most, this. */
  neededPa: number
  ratio: number
}

/** Which limits of a bladder accumulator its pressures break. All gauge, or all absolute. */
export function brokenAccumulatorLimits({ prechargePa, lowestPressurePa, highestPressurePa, makersRatio }: Pressures): BrokenLimit[] {
  if (prechargePa === undefined) return []
  const broken: BrokenLimit[] = []
  const leastPa = leastOverPrecharge * prechargePa
  const ratio = makersRatio ?? highestOverPrecharge
  if (lowestPressurePa !== undefined && isBelow(lowestPressurePa, leastPa)) {
    broken.push({ limit: 'lowest', neededPa: leastPa, ratio: leastOverPrecharge })
  }
  if (highestPressurePa !== undefined && isBelow(ratio * prechargePa, highestPressurePa)) {
    broken.push({ limit: 'highest', neededPa: ratio * prechargePa, ratio })
  }
  return broken
}

/** 99 bar is 1.1 times 90 bar, whatever the last binary digit says. */
const isBelow = (a: number, b: number) => a < b * (1 - 1e-9)
