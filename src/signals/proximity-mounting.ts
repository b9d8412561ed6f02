import type { Quantity, Result, Stated } from '../law/law.ts'
import { law } from './law.ts'
import { atMost } from './verdict.ts'

export type Mounting = 'flush' | 'non-flush'

/** Clearances in mm. A data sheet that gives others governs. */
export interface Clearances {
  /** Depth behind the face that must be free of metal. */
  freeDepth: Result
  /** Diameter round the face that must be free of metal. */
  freeDiameter: Result
  /** To metal in front of the face. */
  background: Result
  /** Edge to edge of two switches side by side. */
  sideBySide: Result
  faceToFace: Result
}

const standard = 'IEC 60947-5-2, annex A'
const multiple = (value: number, source = 'common practice'): Stated => ({ value, basis: 'generic', fromMemory: true, source })

const timesDistance = law({
  formula: 's = a·Sₙ',
  unit: 'mm',
  inputs: ['clearanceFactor', 'ratedDistanceMm'],
  value: ({ clearanceFactor, ratedDistanceMm }) => clearanceFactor * ratedDistanceMm,
})
const timesFace = law({
  formula: 's = a·d',
  unit: 'mm',
  inputs: ['clearanceFactor', 'faceDiameterMm'],
  value: ({ clearanceFactor, faceDiameterMm }) => clearanceFactor * faceDiameterMm,
})

interface Face {
  ratedDistanceMm?: Quantity | undefined
  faceDiameterMm?: Quantity | undefined
}

/** Generic clearances of an inductive switch; only the depth of 2·Sₙ has been looked up. */
export function mountingClearances(mounting: Mounting, face: Face): Clearances {
  const flush = mounting === 'flush'
  return {
    freeDepth: timesDistance({
      ...face,
      clearanceFactor: flush ? multiple(0, standard) : { value: 2, basis: 'standard', source: standard },
    }),
    freeDiameter: timesFace({ ...face, clearanceFactor: multiple(flush ? 1 : 3, standard) }),
    background: timesDistance({ ...face, clearanceFactor: multiple(3, standard) }),
    sideBySide: timesFace({ ...face, clearanceFactor: multiple(flush ? 1 : 2) }),
    faceToFace: timesDistance({ ...face, clearanceFactor: multiple(6) }),
  }
}

export type MountingFault = 'non-flush-mounted-flush' | 'gap-beyond-assured' | 'may-touch' | 'target-too-small' | 'target-too-fast'

interface Mounted {
  type?: Mounting | undefined
  mount?: Mounting | undefined
  gapMm?: number | undefined
  vibrationMm?: number | undefined
  targetSideMm?: number | undefined
  eventsHz?: number | undefined
  /** Limits in mm and Hz, as computed. */
  assuredMm?: number | undefined
  ratedDistanceMm?: number | undefined
  standardSideMm?: number | undefined
  ratedHz?: number | undefined
}

/** Share of Sₙ that stays between face and target at the greatest vibration. Common practice. */
export const touchClearanceFraction = 0.1

/** What is wrong with a mounted switch. What is not known is not judged. */
export function mountingFaults(mounted: Mounted): MountingFault[] {
  const { type, mount, gapMm, vibrationMm, targetSideMm, eventsHz, assuredMm, ratedDistanceMm, standardSideMm, ratedHz } = mounted
  const nearest = gapMm !== undefined && vibrationMm !== undefined ? gapMm - vibrationMm : undefined
  const clearance = ratedDistanceMm === undefined ? undefined : touchClearanceFraction * ratedDistanceMm
  const beyond = (value: number | undefined, limit: number | undefined) => value !== undefined && limit !== undefined && !atMost(value, limit)
  return [
    ...(type === 'non-flush' && mount === 'flush' ? (['non-flush-mounted-flush'] as const) : []),
    ...(beyond(gapMm, assuredMm) ? (['gap-beyond-assured'] as const) : []),
    ...(beyond(clearance, nearest) ? (['may-touch'] as const) : []),
    ...(beyond(standardSideMm, targetSideMm) ? (['target-too-small'] as const) : []),
    ...(beyond(eventsHz, ratedHz) ? (['target-too-fast'] as const) : []),
  ]
}
