import { law } from './law.ts'

/** Voltage in V across a resistor in the loop. */
export const resistorVoltage = law({
  formula: 'U = I·R/1000',
  unit: 'V',
  inputs: ['currentMa', 'loadOhm'],
  value: ({ currentMa, loadOhm }) => (currentMa * loadOhm) / 1000,
})

/** The most Ω that a loop may have; `highestCurrent` is that of a failure, 22 mA unless the data sheet says other. */
export const largestLoop = law({
  formula: 'R = 1000·(Uₛ − U_t)/I',
  unit: 'Ω',
  inputs: ['supplyV', 'transmitterV', 'highestCurrentMa'],
  conflict: ({ supplyV, transmitterV }) => (supplyV < transmitterV ? 'the `supply` is less than the transmitter needs' : undefined),
  value: ({ supplyV, transmitterV, highestCurrentMa }) => (1000 * (supplyV - transmitterV)) / highestCurrentMa,
})

/** Ω of card and cable, there and back; `length` one way. */
export const loopResistance = law({
  formula: 'R = R_c + 2·L·r/1000',
  unit: 'Ω',
  inputs: ['cardOhm', 'lengthM', 'resistanceOhmPerKm'],
  value: ({ cardOhm, lengthM, resistanceOhmPerKm }) => cardOhm + (2 * lengthM * resistanceOhmPerKm) / 1000,
})

/** Voltage in V that is left for the transmitter. */
export const transmitterVoltage = law({
  formula: 'U = Uₛ − I·R/1000',
  unit: 'V',
  inputs: ['supplyV', 'currentMa', 'loadOhm'],
  conflict: ({ supplyV, currentMa, loadOhm }) =>
    (currentMa * loadOhm) / 1000 > supplyV ? 'the `supply` cannot drive this current through the `load`' : undefined,
  value: ({ supplyV, currentMa, loadOhm }) => supplyV - (currentMa * loadOhm) / 1000,
})

/** Current in mA with a short circuit across the transmitter: only card and cable limit it. */
export const shortedLoopCurrent = law({
  formula: 'I = 1000·Uₛ/R',
  unit: 'mA',
  inputs: ['supplyV', 'loadOhm'],
  value: ({ supplyV, loadOhm }) => (1000 * supplyV) / loadOhm,
})
