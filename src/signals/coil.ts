import type { Quantity, Result, Stated } from '../law/law.ts'
import { type Given, law } from './law.ts'
import type { Refused } from './refusals.ts'
import { judge, type Verdict } from './verdict.ts'

/** What a coil is fed with, and whether anything but wire is in it; either may be unknown. */
interface Coil {
  fedWith?: 'd.c.' | 'a.c.' | undefined
  /** An economiser, an LED, a suppressor. */
  hasElectronics?: boolean | undefined
}

/** What a coil may differ from its cold resistance, in %, unless its data say other. Common practice. */
export const coilTolerance: Stated = { value: 10, basis: 'generic', source: 'common practice' }

/** How much hotter than 20 °C a coil gets, at most, unless its data say other. Common practice, from memory. */
export const coilRise: Stated = { value: 80, basis: 'generic', fromMemory: true, source: 'common practice' }

const resistance = law({ formula: 'R = U²/P', unit: 'Ω', inputs: ['coilV', 'coilW'], value: ({ coilV, coilW }) => coilV ** 2 / coilW })

/** Current in mA of a d.c. coil. */
export const coilCurrent = law({
  formula: 'I = 1000·P/U',
  unit: 'mA',
  inputs: ['coilV', 'coilW'],
  value: ({ coilV, coilW }) => (1000 * coilW) / coilV,
})

/** Resistance in Ω at 20 °C of a coil that is nothing but wire on direct current; every other is refused. */
export function coldCoilResistance(coil: Coil, given: Given<'coilV' | 'coilW'>): Result | Refused {
  if (coil.fedWith === 'a.c.') return { refused: 'alternating-current-coil' }
  if (coil.hasElectronics === true) return { refused: 'coil-with-electronics' }
  const unknown = [
    ...(coil.fedWith === undefined ? (['coilFeed'] as const) : []),
    ...(coil.hasElectronics === undefined ? (['coilElectronics'] as const) : []),
  ]
  return unknown.length > 0 ? { notComputed: unknown } : resistance(given)
}

/** Resistance in Ω of a coil that has grown hotter than 20 °C. */
export const warmCoilResistance = law({
  formula: 'R = R₂₀·(1 + α·ΔT)',
  unit: 'Ω',
  inputs: ['coldOhm', 'copperPerK', 'riseK'],
  value: ({ coldOhm, copperPerK, riseK }) => coldOhm * (1 + copperPerK * riseK),
})

/** A measured resistance against the one expected, with a tolerance in %. */
export function coilVerdict(measuredOhm: number, expectedOhm: number, tolerancePercent: Quantity): Verdict {
  const tolerance = (typeof tolerancePercent === 'number' ? tolerancePercent : tolerancePercent.value) / 100
  return judge(measuredOhm, { low: expectedOhm * (1 - tolerance), high: expectedOhm * (1 + tolerance) })
}
