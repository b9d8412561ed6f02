import type { Quantity, Result, Stated } from '../law/law.ts'
import { law } from './law.ts'
import type { Refused } from './refusals.ts'
import type { ThermocoupleType } from './thermocouple-coefficients.ts'
import { within } from './verdict.ts'

export type ThermocoupleClass = 'class 1' | 'class 2' | 'class 3'

/** From the first temperature to the second the tolerance is the larger of a fixed one in K and a share of |t|. */
interface ClassLimits {
  fromC: number
  toC: number
  fixedK: number
  share: number
  fromMemory: boolean
}

const limits = (fromC: number, toC: number, fixedK: number, share: number, fromMemory: boolean): ClassLimits => ({
  fromC,
  toC,
  fixedK,
  share,
  fromMemory,
})

/** Source: IEC 60584-1:2013, tolerance classes. */
const classes: Readonly<Record<ThermocoupleType, Readonly<Partial<Record<ThermocoupleClass, ClassLimits>>>>> = {
  K: {
    'class 1': limits(-40, 1000, 1.5, 0.004, false),
    'class 2': limits(-40, 1200, 2.5, 0.0075, false),
    'class 3': limits(-200, 40, 2.5, 0.015, true),
  },
  J: { 'class 1': limits(-40, 750, 1.5, 0.004, true), 'class 2': limits(-40, 750, 2.5, 0.0075, true) },
  T: {
    'class 1': limits(-40, 350, 0.5, 0.004, true),
    'class 2': limits(-40, 350, 1, 0.0075, true),
    'class 3': limits(-200, 40, 1, 0.015, true),
  },
}

/** Tolerance in ± K; refused where the class does not reach to the temperature. */
export function thermocoupleTolerance(
  { temperatureC }: { temperatureC?: Quantity | undefined },
  type: ThermocoupleType,
  name: ThermocoupleClass,
): Result | Refused {
  const found = classes[type][name]
  if (!found) return { refused: 'outside-class-range' }
  const fixedK: Stated = { value: found.fixedK, basis: 'standard', source: 'IEC 60584-1:2013', ...(found.fromMemory ? { fromMemory: true } : {}) }
  const result = largerTolerance({ temperatureC, fixedK, shareOfT: found.share })
  const at = 'value' in result ? result.inputs.find(({ name: it }) => it === 'temperatureC')?.value : undefined
  return at !== undefined && !within(at, { low: found.fromC, high: found.toC }) ? { refused: 'outside-class-range' } : result
}

const largerTolerance = law({
  formula: 'Δt = max(c, f·|t|)',
  unit: 'K',
  inputs: ['fixedK', 'shareOfT', 'temperatureC'],
  value: ({ fixedK, shareOfT, temperatureC }) => Math.max(fixedK, shareOfT * Math.abs(temperatureC)),
})
