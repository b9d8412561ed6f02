import type { Quantity, Result } from '../law/law.ts'
import { law } from './law.ts'
import { platinumResistance } from './platinum.ts'
import type { Refused } from './refusals.ts'
import { within } from './verdict.ts'

export type PlatinumClass = 'AA' | 'A' | 'B' | 'C'
export type PlatinumElement = 'wire-wound' | 'film'

/** Fixed part in K and share of |t|. Source: IEC 60751:2022, tolerance classes. */
const tolerances: Readonly<Record<PlatinumClass, readonly [fixedK: number, perDegree: number]>> = {
  AA: [0.1, 0.0017],
  A: [0.15, 0.002],
  B: [0.3, 0.005],
  C: [0.6, 0.01],
}

/** From and to °C. Source: IEC 60751, from memory: a data sheet with its own range replaces it. */
export const classRangesC: Readonly<Record<PlatinumElement, Readonly<Record<PlatinumClass, readonly [from: number, to: number]>>>> = {
  'wire-wound': { AA: [-50, 250], A: [-100, 450], B: [-196, 600], C: [-196, 600] },
  film: { AA: [0, 150], A: [-30, 300], B: [-50, 500], C: [-50, 600] },
}

/** Tolerance in ± K of a class at a temperature; refused outside the range of the class, which the caller gives. */
export function platinumTolerance(
  { temperatureC }: { temperatureC?: Quantity | undefined },
  name: PlatinumClass,
  [from, to]: readonly [from: number, to: number],
): Result | Refused {
  const [fixedK, perDegree] = tolerances[name]
  const result = law({
    formula: `Δt = ${fixedK} + ${perDegree}·|t|`,
    unit: 'K',
    inputs: ['temperatureC'],
    value: (values) => fixedK + perDegree * Math.abs(values.temperatureC),
  })({ temperatureC })
  const at = 'value' in result ? result.inputs[0]?.value : undefined
  return at !== undefined && !within(at, { low: from, high: to }) ? { refused: 'outside-class-range' } : result
}

/** The resistances in Ω between which an element of a class lies at a temperature. */
export function platinumLimits(
  given: { temperatureC: number; iceResistanceOhm: number },
  name: PlatinumClass,
  range: readonly [from: number, to: number],
): { low: Result; high: Result } | Exclude<Result, { value: number }> | Refused {
  const tolerance = platinumTolerance(given, name, range)
  if (!('value' in tolerance)) return tolerance
  const at = (offsetK: number) => platinumResistance({ ...given, temperatureC: given.temperatureC + offsetK })
  return { low: at(-tolerance.value), high: at(tolerance.value) }
}
