/** Distance in mm between a protective device and the danger zone, and what it follows from. */
export interface SafetyDistance {
  distanceMm: number
  /** Speed of approach K in mm/s. */
  approachMmPerS: number
  /** Supplement C in mm: how far a person reaches before the device notices. */
  reachMm: number
}

/** What is missing, by its name in hazards.yaml; or why no distance follows. Nothing is put in the place of either. */
export type SafetyDistanceResult = SafetyDistance | { notComputed: readonly string[] } | { impossible: string }

export const isDistance = (result: SafetyDistanceResult): result is SafetyDistance => 'distanceMm' in result

/** How a person reaches the danger zone, by the kind of device; the values are plain numbers in s and mm. */
export type ProtectiveDevice =
  | { kind: 'light-curtain'; stopTimeS: number | undefined; resolutionMm: number | undefined }
  | { kind: 'two-hand-control'; stopTimeS: number | undefined; covered: boolean }
  | { kind: 'pressure-mat'; stopTimeS: number | undefined }

/** A hand approaches, and a walking person, in mm/s. Source: ISO 13855:2010, 5.3 and 6.2.3. */
const handMmPerS = 2000
const walkMmPerS = 1600

/** Above this resolution in mm a curtain notices an arm and no hand. Above the second it is a beam at a height of its own. */
const finestMm = 40
const coarsestMm = 70

/**
 * The least distance S = K·T + C for an approach at a right angle. T is the time from the approach to standstill: that of
 * the device and that of the machine together. Source: ISO 13855:2010, 6.2.3.1; from memory: 6.2.3.2 (resolution over
 * 40 mm), clause 8 (two-hand control) and clause 7 (pressure mat).
 */
export function safetyDistance(device: ProtectiveDevice): SafetyDistanceResult {
  const { stopTimeS } = device
  const missing = [
    ...(stopTimeS === undefined ? ['stopTimeS'] : []),
    ...('resolutionMm' in device && device.resolutionMm === undefined ? ['resolutionMm'] : []),
  ]
  if (stopTimeS === undefined || missing.length > 0) return { notComputed: missing }
  if (!(Number.isFinite(stopTimeS) && stopTimeS > 0)) return { impossible: 'the stopping time must be more than 0 s' }
  if (device.kind === 'pressure-mat') return at(walkMmPerS, stopTimeS, 1200)
  if (device.kind === 'two-hand-control') return device.covered ? atLeast(100, at(walkMmPerS, stopTimeS, 0)) : at(walkMmPerS, stopTimeS, 250)
  const resolutionMm = device.resolutionMm ?? Number.NaN
  if (!(resolutionMm > 0)) return { impossible: 'the resolution must be more than 0 mm' }
  if (resolutionMm > coarsestMm) return { impossible: `a resolution over ${coarsestMm} mm is that of single beams, for which their heights count` }
  if (resolutionMm > finestMm) return at(walkMmPerS, stopTimeS, 850)
  const reachMm = Math.max(0, 8 * (resolutionMm - 14))
  const quick = at(handMmPerS, stopTimeS, reachMm)
  return quick.distanceMm <= 500 ? atLeast(100, quick) : atLeast(500, at(walkMmPerS, stopTimeS, reachMm))
}

/** Rounded to the hundredth of a millimetre, which is below what a binary fraction leaves over. */
const at = (approachMmPerS: number, stopTimeS: number, reachMm: number): SafetyDistance => ({
  distanceMm: Math.round((approachMmPerS * stopTimeS + reachMm) * 100) / 100,
  approachMmPerS,
  reachMm,
})

const atLeast = (leastMm: number, found: SafetyDistance): SafetyDistance => ({ ...found, distanceMm: Math.max(leastMm, found.distanceMm) })
