import { law } from './law.ts'

/** Time in seconds to standstill under a torque that stays the same: a brake, dry friction. */
export const runDownTime = law({
  formula: 't = I·ω/M',
  unit: 's',
  inputs: ['momentOfInertiaKgM2', 'speedRadPerS', 'brakingTorqueNm'],
  value: ({ momentOfInertiaKgM2, speedRadPerS, brakingTorqueNm }) => (momentOfInertiaKgM2 * speedRadPerS) / brakingTorqueNm,
})

/** Time in seconds to a speed under a drag that grows with the speed. It never reaches standstill, so it asks for a speed. */
export const viscousRunDownTime = law({
  formula: 't = (I/b)·ln(ω/ω₁)',
  unit: 's',
  inputs: ['momentOfInertiaKgM2', 'speedRadPerS', 'viscousDragNmsPerRad', 'harmlessSpeedRadPerS'],
  value: ({ momentOfInertiaKgM2, speedRadPerS, viscousDragNmsPerRad, harmlessSpeedRadPerS }) =>
    speedRadPerS <= harmlessSpeedRadPerS ? 0 : (momentOfInertiaKgM2 / viscousDragNmsPerRad) * Math.log(speedRadPerS / harmlessSpeedRadPerS),
})

/** Torque in newton metre that brings a rotor to standstill in a time. */
export const stoppingTorque = law({
  formula: 'M = I·ω/t',
  unit: 'Nm',
  inputs: ['momentOfInertiaKgM2', 'speedRadPerS', 'stoppingTimeS'],
  value: ({ momentOfInertiaKgM2, speedRadPerS, stoppingTimeS }) => (momentOfInertiaKgM2 * speedRadPerS) / stoppingTimeS,
})

/** Angle in radian through which it still turns. */
export const stoppingAngle = law({
  formula: 'θ = I·ω²/(2·M)',
  unit: 'rad',
  inputs: ['momentOfInertiaKgM2', 'speedRadPerS', 'brakingTorqueNm'],
  value: ({ momentOfInertiaKgM2, speedRadPerS, brakingTorqueNm }) => (momentOfInertiaKgM2 * speedRadPerS ** 2) / (2 * brakingTorqueNm),
})
