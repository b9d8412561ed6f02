import type { Stated } from '../law/law.ts'
import { law } from './law.ts'

interface OutputRating {
  /** The most it carries all the time, in A. */
  highestA: Stated
  dropV: Stated
  leakageMa: Stated
}

const memory = (value: number): Stated => ({ value, basis: 'standard', fromMemory: true, source: 'IEC 61131-2, d.c. digital outputs' })

/** Outputs that switch L+, by their rated current in A. */
export const outputRatings: ReadonlyMap<number, OutputRating> = new Map(
  (
    [
      [0.1, 0.12, 0.1],
      [0.25, 0.3, 0.5],
      [0.5, 0.6, 0.5],
      [1, 1.2, 1],
      [2, 2.4, 1],
    ] as const
  ).map(([ratedA, highestA, leakageMa]) => [ratedA, { highestA: memory(highestA), dropV: memory(3), leakageMa: memory(leakageMa) }]),
)

/** Least voltage in V at the terminal of an output that is on. */
export const outputVoltage = law({
  formula: 'U = Uₛ − U_d',
  unit: 'V',
  inputs: ['supplyV', 'dropV'],
  conflict: ({ supplyV, dropV }) => (dropV > supplyV ? 'the output drops more than the `supply`' : undefined),
  value: ({ supplyV, dropV }) => supplyV - dropV,
})

/** Voltage in V at a load, with the cable there and back; `length` one way. */
export const loadVoltage = law({
  formula: 'U = Uₛ − U_d − 2·I·L·r/1000',
  unit: 'V',
  inputs: ['supplyV', 'dropV', 'loadCurrentA', 'lengthM', 'resistanceOhmPerKm'],
  conflict: (values) => (values.dropV + cableV(values) > values.supplyV ? 'output and cable drop more than the `supply`' : undefined),
  value: (values) => values.supplyV - values.dropV - cableV(values),
})

function cableV({ loadCurrentA, lengthM, resistanceOhmPerKm }: Readonly<Record<'loadCurrentA' | 'lengthM' | 'resistanceOhmPerKm', number>>): number {
  return (2 * loadCurrentA * lengthM * resistanceOhmPerKm) / 1000
}
