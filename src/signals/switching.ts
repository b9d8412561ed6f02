import type { Stated } from '../law/law.ts'
import { law } from './law.ts'

/** Most differential travel of a proximity switch, as a share of Sᵣ. Source: IEC 60947-5-2, differential travel. */
export const mostTravel: Stated = { value: 0.2, basis: 'standard', fromMemory: true, source: 'IEC 60947-5-2, differential travel' }

/** Most distance in mm between switching on and off. */
export const differentialTravel = law({
  formula: 'H = h·Sᵣ',
  unit: 'mm',
  inputs: ['travelFraction', 'effectiveDistanceMm'],
  value: ({ travelFraction, effectiveDistanceMm }) => travelFraction * effectiveDistanceMm,
})

/** Measured hysteresis in % of the distance at which the target, coming nearer, is first seen. */
export const hysteresis = law({
  formula: 'H = 100·(s₂ − s₁)/s₁',
  unit: '%',
  inputs: ['onDistanceMm', 'offDistanceMm'],
  conflict: ({ onDistanceMm, offDistanceMm }) =>
    offDistanceMm < onDistanceMm ? 'a switch goes off further away than it comes on: `offDistance` is the smaller' : undefined,
  value: ({ onDistanceMm, offDistanceMm }) => (100 * (offDistanceMm - onDistanceMm)) / onDistanceMm,
})

/** How often targets on a turning part pass, in Hz: to be held against the rated switching frequency. */
export const targetRate = law({
  formula: 'f = z·n/60',
  unit: 'Hz',
  inputs: ['targets', 'speedPerMin'],
  value: ({ targets, speedPerMin }) => (targets * speedPerMin) / 60,
})

/** How long a target stands before the face, in ms. It must exceed response, input filter and scan together. */
export const targetTime = law({
  formula: 't = L/v',
  unit: 'ms',
  inputs: ['targetLengthMm', 'movingMPerS'],
  value: ({ targetLengthMm, movingMPerS }) => targetLengthMm / movingMPerS,
})
