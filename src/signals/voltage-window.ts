import type { Quantity, Result, Stated } from '../law/law.ts'
import { law } from './law.ts'

interface Window {
  low: Stated
  high: Stated
}

const shares = (low: number, high: number, rest: Omit<Stated, 'value'>): Window => ({ low: { value: low, ...rest }, high: { value: high, ...rest } })

/** Shares of the rated voltage. A data sheet that gives others governs. */
export const voltageWindows = {
  'controller supply': shares(0.85, 1.2, { basis: 'standard', source: 'IEC 61131-2, supply of 24 V d.c.' }),
  valve: shares(0.85, 1.1, { basis: 'generic', source: 'common practice' }),
  'contactor must close': shares(0.85, 1.1, { basis: 'standard', fromMemory: true, source: 'IEC 60947-4-1' }),
  'd.c. contactor has released': shares(0.1, 0.75, { basis: 'standard', fromMemory: true, source: 'IEC 60947-4-1' }),
  'a.c. contactor has released': shares(0.2, 0.75, { basis: 'standard', fromMemory: true, source: 'IEC 60947-4-1' }),
} as const satisfies Record<string, Window>

const share = law({
  formula: 'U = f·Uₙ',
  unit: 'V',
  inputs: ['voltageShare', 'ratedV'],
  value: ({ voltageShare, ratedV }) => voltageShare * ratedV,
})

/** Both ends of a window in V. */
export function voltageWindow({ low, high }: Window, ratedV: Quantity | undefined): { low: Result; high: Result } {
  return { low: share({ voltageShare: low, ratedV }), high: share({ voltageShare: high, ratedV }) }
}
