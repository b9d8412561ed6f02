import { law } from './law.ts'

/** Pulses in Hz of a flow meter. */
export const flowFrequency = law({
  formula: 'f = K·Q/60',
  unit: 'Hz',
  inputs: ['pulsesPerLitre', 'flowLPerMin'],
  value: ({ pulsesPerLitre, flowLPerMin }) => (pulsesPerLitre * flowLPerMin) / 60,
})

/** Flow in l/min from the pulses of a flow meter. */
export const flowOfFrequency = law({
  formula: 'Q = 60·f/K',
  unit: 'l/min',
  inputs: ['frequencyHz', 'pulsesPerLitre'],
  value: ({ frequencyHz, pulsesPerLitre }) => (60 * frequencyHz) / pulsesPerLitre,
})

/** Litres that a number of pulses stand for. */
export const volumeOfPulses = law({
  formula: 'V = N/K',
  unit: 'l',
  inputs: ['pulses', 'pulsesPerLitre'],
  value: ({ pulses, pulsesPerLitre }) => pulses / pulsesPerLitre,
})

/** Pulses in Hz on one channel of an encoder. */
export const encoderFrequency = law({
  formula: 'f = p·n/60',
  unit: 'Hz',
  inputs: ['pulsesPerTurn', 'speedPerMin'],
  value: ({ pulsesPerTurn, speedPerMin }) => (pulsesPerTurn * speedPerMin) / 60,
})

/** Counts in 1/s of an input that counts all four edges of two channels. */
export const quadratureRate = law({
  formula: 'f = 4·p·n/60',
  unit: '1/s',
  inputs: ['pulsesPerTurn', 'speedPerMin'],
  value: ({ pulsesPerTurn, speedPerMin }) => (4 * pulsesPerTurn * speedPerMin) / 60,
})

/** Speed in min⁻¹ from the pulses of an encoder. */
export const encoderSpeed = law({
  formula: 'n = 60·f/p',
  unit: 'min⁻¹',
  inputs: ['frequencyHz', 'pulsesPerTurn'],
  value: ({ frequencyHz, pulsesPerTurn }) => (60 * frequencyHz) / pulsesPerTurn,
})

/** Angle in ° of one count, of all four edges. */
export const encoderResolution = law({
  formula: 'φ = 360/(4·p)',
  unit: '°',
  inputs: ['pulsesPerTurn'],
  value: ({ pulsesPerTurn }) => 360 / (4 * pulsesPerTurn),
})
