import { isComputed, type Result, type Stated } from '../law/law.ts'
import { type ConductorClass, conductorOhmPerKm, conductorSizesMm2 } from './cable.ts'
import { type Given, law } from './law.ts'
import { atMost } from './verdict.ts'

/** Most drop from supply to load, in % of the supply. Source: IEC 60204-1, 12.5. */
export const mostDropPercent: Stated = { value: 5, basis: 'standard', fromMemory: true, source: 'IEC 60204-1, 12.5' }

const inputs = ['loadCurrentA', 'lengthM', 'resistanceOhmPerKm'] as const

/** Drop in V over a cable there and back, of direct current or one phase; `length` one way. */
export const cableDrop = law({
  formula: 'ΔU = 2·I·L·r/1000',
  unit: 'V',
  inputs,
  value: ({ loadCurrentA, lengthM, resistanceOhmPerKm }) => (2 * loadCurrentA * lengthM * resistanceOhmPerKm) / 1000,
})

/** The same in % of the supply. */
export const cableDropPercent = law({
  formula: 'ΔU = 100·2·I·L·r/(1000·Uₛ)',
  unit: '%',
  inputs: [...inputs, 'supplyV'],
  conflict: ({ supplyV }) => (supplyV === 0 ? 'without a `supply` there is no share of it' : undefined),
  value: ({ loadCurrentA, lengthM, resistanceOhmPerKm, supplyV }) => (0.2 * loadCurrentA * lengthM * resistanceOhmPerKm) / supplyV,
})

/**
 * The smallest cross-section in mm² of a class that drops no more than a limit in V; undefined where the largest
 * of the table drops more, or what is missing.
 */
export function smallestSize(
  given: Given<'loadCurrentA' | 'lengthM'>,
  conductor: ConductorClass,
  mostV: number,
): { areaMm2: number; drop: Result } | Exclude<Result, { value: number }> | undefined {
  for (const areaMm2 of conductorSizesMm2(conductor)) {
    const drop = cableDrop({ ...given, resistanceOhmPerKm: conductorOhmPerKm(areaMm2, conductor) })
    if (!isComputed(drop)) return drop
    if (atMost(drop.value, mostV)) return { areaMm2, drop }
  }
  return undefined
}
