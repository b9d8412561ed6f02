import type { Quantity, Stated } from '../law/law.ts'
import type { ProximityPrinciple } from './proximity.ts'
import type { Refused } from './refusals.ts'

/** Lowest and highest factor that is met. */
type FactorRange = readonly [low: number, high: number]

const inductive: Readonly<Record<string, FactorRange>> = {
  'mild steel': [1, 1],
  'stainless steel': [0.6, 1],
  'cast iron': [0.93, 1.05],
  nickel: [0.65, 0.75],
  brass: [0.32, 0.51],
  aluminium: [0.2, 0.5],
  copper: [0.15, 0.45],
}
const capacitive: Readonly<Record<string, FactorRange>> = {
  metal: [1, 1],
  water: [1, 1],
  wood: [0.2, 0.7],
  glass: [0.3, 0.5],
  pvc: [0.2, 0.4],
  oil: [0.1, 0.2],
}

/**
 * Inductive: primers of the trade and data sheets together, factors of single devices included. Capacitive: from
 * memory; what counts there is a trial on the real material.
 */
export const materialFactorRanges: Readonly<Record<ProximityPrinciple, Readonly<Record<string, FactorRange>>>> = { inductive, capacitive }

interface MaterialFactor {
  /** For a limit: the factor of the data sheet, or the low end of the range. */
  factor: Stated
  /** Present where there is no data sheet: to be shown beside the limit. */
  range?: FactorRange
}

/** The factor of a material for a switch; a material that is not on record is refused. `stated`: from the data sheet or measured. */
export function materialFactor(principle: ProximityPrinciple, material: string, stated?: Quantity): MaterialFactor | Refused {
  if (stated !== undefined) return { factor: typeof stated === 'number' ? { value: stated, basis: 'data sheet' } : stated }
  const range = new Map(Object.entries(materialFactorRanges[principle])).get(material)
  if (!range) return { refused: 'material-without-factor' }
  return { factor: { value: range[0], basis: 'generic', ...(principle === 'capacitive' ? { fromMemory: true as const } : {}) }, range }
}
