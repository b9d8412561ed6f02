import type { Stated } from '../law/law.ts'
import { law } from './law.ts'

/** What windings or phases of a motor may differ, in %. Common practice. */
export const mostImbalance: Stated = { value: 5, basis: 'generic', source: 'common practice' }

/** How far three phases differ, in % of their mean: of resistances or of currents. */
export const phaseImbalance = law({
  formula: 'b = 100·(max − min)/mean',
  unit: '%',
  inputs: ['phaseA', 'phaseB', 'phaseC'],
  value: ({ phaseA, phaseB, phaseC }) => {
    const phases = [phaseA, phaseB, phaseC]
    return (300 * (Math.max(...phases) - Math.min(...phases))) / (phaseA + phaseB + phaseC)
  },
})

/** Speed in min⁻¹ of the field; `poles` counts all of them, and not pairs. */
export const synchronousSpeed = law({
  formula: 'nₛ = 120·f/p',
  unit: 'min⁻¹',
  inputs: ['frequencyHz', 'poles'],
  conflict: ({ poles }) => (Number.isInteger(poles / 2) ? undefined : '`poles` must be an even number'),
  value: ({ frequencyHz, poles }) => (120 * frequencyHz) / poles,
})

/** How far a motor stays behind its field, in %; negative where it is driven. */
export const slip = law({
  formula: 's = 100·(nₛ − n)/nₛ',
  unit: '%',
  inputs: ['synchronousPerMin', 'speedPerMin'],
  value: ({ synchronousPerMin, speedPerMin }) => (100 * (synchronousPerMin - speedPerMin)) / synchronousPerMin,
})

/** Force in N of a cylinder with a bore in mm, without friction. */
export const cylinderForce = law({
  formula: 'F = 0.1·p·π·D²/4',
  unit: 'N',
  inputs: ['pressureBar', 'boreMm'],
  value: ({ pressureBar, boreMm }) => (0.1 * pressureBar * Math.PI * boreMm ** 2) / 4,
})
