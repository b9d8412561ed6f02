import { law } from './law.ts'

const zeroC = 273.15

/** Resistance in Ω of an NTC by its beta value. */
export const thermistorResistance = law({
  formula: 'R = R₂₅·exp(B·(1/T − 1/T₂₅)), T in kelvin',
  unit: 'Ω',
  inputs: ['referenceOhm', 'betaK', 'referenceC', 'temperatureC'],
  value: ({ referenceOhm, betaK, referenceC, temperatureC }) =>
    referenceOhm * Math.exp(betaK * (1 / (temperatureC + zeroC) - 1 / (referenceC + zeroC))),
})

/** Temperature in °C of an NTC by its beta value. */
export const thermistorTemperature = law({
  formula: '1/T = 1/T₂₅ + ln(R/R₂₅)/B, T in kelvin',
  unit: '°C',
  inputs: ['thermistorOhm', 'referenceOhm', 'betaK', 'referenceC'],
  conflict: (values) => (inverseKelvin(values) <= 0 ? 'no temperature has this `resistance`' : undefined),
  value: (values) => 1 / inverseKelvin(values) - zeroC,
})

function inverseKelvin(values: Readonly<Record<'thermistorOhm' | 'referenceOhm' | 'betaK' | 'referenceC', number>>): number {
  return 1 / (values.referenceC + zeroC) + Math.log(values.thermistorOhm / values.referenceOhm) / values.betaK
}

/** Temperature in °C by the equation of Steinhart and Hart. */
export const steinhartTemperature = law({
  formula: '1/T = a + b·ln R + c·(ln R)³, T in kelvin',
  unit: '°C',
  inputs: ['thermistorOhm', 'steinhartA', 'steinhartB', 'steinhartC'],
  conflict: (values) => (steinhart(values) <= 0 ? 'no temperature has this `resistance`' : undefined),
  value: (values) => 1 / steinhart(values) - zeroC,
})

function steinhart(values: Readonly<Record<'thermistorOhm' | 'steinhartA' | 'steinhartB' | 'steinhartC', number>>): number {
  const log = Math.log(values.thermistorOhm)
  return values.steinhartA + values.steinhartB * log + values.steinhartC * log ** 3
}

interface Steinhart {
  steinhartA: number
  steinhartB: number
  steinhartC: number
}
type Point = readonly [temperatureC: number, resistanceOhm: number]

/** The coefficients through three points; undefined where the points do not fix them. */
export function fitSteinhart(points: readonly [Point, Point, Point]): Steinhart | undefined {
  const [[t1, ohm1], [t2, ohm2], [t3, ohm3]] = points
  const [y1, y2, y3] = [1 / (t1 + zeroC), 1 / (t2 + zeroC), 1 / (t3 + zeroC)]
  const [l1, l2, l3] = [Math.log(ohm1), Math.log(ohm2), Math.log(ohm3)]
  const second = (y2 - y1) / (l2 - l1)
  const third = (y3 - y1) / (l3 - l1)
  const steinhartC = (third - second) / ((l3 - l2) * (l1 + l2 + l3))
  const steinhartB = second - steinhartC * (l1 * l1 + l1 * l2 + l2 * l2)
  const steinhartA = y1 - l1 * (steinhartB + l1 * l1 * steinhartC)
  return [steinhartA, steinhartB, steinhartC].every(Number.isFinite) ? { steinhartA, steinhartB, steinhartC } : undefined
}
