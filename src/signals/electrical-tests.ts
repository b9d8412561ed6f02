import type { Stated } from '../law/law.ts'
import { law } from './law.ts'
import { judge, type Verdict } from './verdict.ts'

/** Least insulation in MΩ at 500 V d.c. between power circuit and bonding. Source: IEC 60204-1, 18.3. */
export const leastInsulation: Stated = { value: 1, basis: 'standard', source: 'IEC 60204-1, 18.3' }
/** Test voltage of the insulation in V d.c. */
export const insulationTestV = 500

/** A reading in MΩ that was taken with a test voltage in V; with another voltage it has no verdict. */
export function insulationVerdict(resistanceMohm: number, testV: number, { value }: Stated): Verdict {
  return testV === insulationTestV ? judge(resistanceMohm, { low: value }) : 'no verdict'
}

/** Resistance in mΩ of a bonding circuit from the drop of a test current. The expected one is `wireResistance`, plus contacts. */
export const bondingResistance = law({
  formula: 'R = 1000·U/I',
  unit: 'mΩ',
  inputs: ['measuredV', 'injectedA'],
  value: ({ measuredV, injectedA }) => (1000 * measuredV) / injectedA,
})

/** Test currents in A. Source: IEC 60204-1, 18.2. */
export const bondingCurrentA = { low: 0.2, high: 10 } as const
