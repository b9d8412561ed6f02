import type { Quantity, Result, Stated } from '../law/law.ts'
import { law } from './law.ts'
import type { Refused } from './refusals.ts'
import { atLeast, atMost, type Verdict } from './verdict.ts'

export type ProximityPrinciple = 'inductive' | 'capacitive'

/** Shares of the rated operating distance Sₙ. */
interface DistanceFactors {
  /** Inside it the switch must be on. */
  assured: Stated
  /** From it on the switch must be off. */
  off: Stated
  lowestUsable: Stated
  highestUsable: Stated
}

const standard = 'IEC 60947-5-2, operating distances'
const standardLimit = (value: number): Stated => ({ value, basis: 'standard', source: standard })
const fromMemory = (value: number): Stated => ({ value, basis: 'standard', fromMemory: true, source: standard })

/** `off` is Sᵣ, Sᵤ and a differential travel of 0.2·Sᵣ at their upper ends: 1.1·1.1 + 0.2·1.1, capacitive 1.1·1.2 + 0.2·1.1. */
export const distanceFactors: Readonly<Record<ProximityPrinciple, DistanceFactors>> = {
  inductive: { assured: standardLimit(0.81), off: standardLimit(1.43), lowestUsable: standardLimit(0.81), highestUsable: standardLimit(1.21) },
  capacitive: { assured: fromMemory(0.72), off: fromMemory(1.54), lowestUsable: fromMemory(0.72), highestUsable: fromMemory(1.32) },
}

export type Sensing = ProximityPrinciple | 'magnetic' | 'ultrasonic' | 'photoelectric'

/** The factors of a kind of sensing; refused for one that has no assured distance. */
export function factorsOf(sensing: Sensing): DistanceFactors | Refused {
  return sensing === 'inductive' || sensing === 'capacitive' ? distanceFactors[sensing] : { refused: 'no-assured-distance' }
}

/** One device at 23 °C and its rated voltage. Source: IEC 60947-5-2, effective operating distance. */
export const effectiveFactors = { lowest: standardLimit(0.9), highest: standardLimit(1.1) } as const

/** A share of Sₙ on a material, in mm. */
export const distanceOnMaterial = law({
  formula: 's = a·k·Sₙ',
  unit: 'mm',
  inputs: ['distanceFactor', 'materialFactor', 'ratedDistanceMm'],
  value: ({ distanceFactor, materialFactor, ratedDistanceMm }) => distanceFactor * materialFactor * ratedDistanceMm,
})

/** Sensing distance in mm on a material, without tolerances. */
export const reducedDistance = law({
  formula: 's = k·Sₙ',
  unit: 'mm',
  inputs: ['materialFactor', 'ratedDistanceMm'],
  value: ({ materialFactor, ratedDistanceMm }) => materialFactor * ratedDistanceMm,
})

interface ProximityDevice {
  ratedDistanceMm?: Quantity | undefined
  /** 1 on the standard target. `material-factor.ts` gives that of a material. */
  materialFactor?: Quantity | undefined
}

export interface ProximityLimits {
  mustBeOnTo: Result
  mustBeOffFrom: Result
}

/** Gaps in mm: to `mustBeOnTo` the switch must see its target, from `mustBeOffFrom` it must not; between there is no verdict. */
export function proximityLimits(device: ProximityDevice, { assured, off }: Pick<DistanceFactors, 'assured' | 'off'>): ProximityLimits {
  return {
    mustBeOnTo: distanceOnMaterial({ ...device, distanceFactor: assured }),
    mustBeOffFrom: distanceOnMaterial({ ...device, distanceFactor: off }),
  }
}

/** What a switch shows at a gap, against the two limits in mm. `seen`: it senses the target. */
export function gapVerdict(gapMm: number, seen: boolean, onToMm: number, offFromMm: number): Verdict {
  if (atMost(gapMm, onToMm)) return seen ? 'pass' : 'fail'
  if (atLeast(gapMm, offFromMm)) return seen ? 'fail' : 'pass'
  return 'no verdict'
}

/** Whether the gap that a switch is mounted at lies inside its assured distance. */
export const mountedGapVerdict = (gapMm: number, onToMm: number): Verdict =>
  Number.isFinite(gapMm) && Number.isFinite(onToMm) ? (atMost(gapMm, onToMm) ? 'pass' : 'fail') : 'no verdict'

/** Side in mm of the standard target: a square of steel Fe 360, 1 mm thick. Source: IEC 60947-5-2, standard target. */
export const standardTargetSide = law({
  formula: 'a = max(d, 3·Sₙ)',
  unit: 'mm',
  inputs: ['faceDiameterMm', 'ratedDistanceMm'],
  value: ({ faceDiameterMm, ratedDistanceMm }) => Math.max(faceDiameterMm, 3 * ratedDistanceMm),
})

/** The limits hold for a target of the standard side or more; undefined where they do, or a side is not known. */
export function targetRefusal(targetSideMm: number | undefined, standardSideMm: number | undefined): Refused | undefined {
  if (targetSideMm === undefined || standardSideMm === undefined || atLeast(targetSideMm, standardSideMm)) return undefined
  return { refused: 'target-smaller-than-standard' }
}
