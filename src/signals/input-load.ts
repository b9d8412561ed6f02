import { numberOf, type Quantity } from '../law/law.ts'
import type { InputLimits } from './digital-input.ts'
import { law } from './law.ts'
import { atLeast, atMost, type Verdict } from './verdict.ts'

/** Whether an input stays off with the leakage of the sensor, in mA. */
export function leakageVerdict(leakageMa: Quantity, { ignoredMa }: InputLimits): Verdict {
  const leaks = numberOf(leakageMa)
  if (!Number.isFinite(leaks)) return 'no verdict'
  return atMost(leaks, ignoredMa.value) ? 'pass' : 'fail'
}

/**
 * Whether an input draws the load that a sensor needs, in mA. From the limit of the type alone it is guaranteed or
 * not; the current that the card really takes gives a verdict.
 */
export function minimumLoadVerdict(minimumLoadMa: Quantity, { neededMa }: InputLimits, inputCurrentMa?: Quantity): Verdict | 'not guaranteed' {
  const needed = numberOf(minimumLoadMa)
  const drawn = inputCurrentMa === undefined ? neededMa.value : numberOf(inputCurrentMa)
  if (!Number.isFinite(needed) || !Number.isFinite(drawn)) return 'no verdict'
  if (atLeast(drawn, needed)) return 'pass'
  return inputCurrentMa === undefined ? 'not guaranteed' : 'fail'
}

/** Voltage in V that a leakage leaves across an input. */
export const leakageVoltage = law({
  formula: 'U = Iᵣ·R_in/1000',
  unit: 'V',
  inputs: ['leakageMa', 'inputResistanceOhm'],
  value: ({ leakageMa, inputResistanceOhm }) => (leakageMa * inputResistanceOhm) / 1000,
})

/** The same with a bleeder resistor across the input. */
export const bledVoltage = law({
  formula: 'U = Iᵣ·(R_in·R_b/(R_in + R_b))/1000',
  unit: 'V',
  inputs: ['leakageMa', 'inputResistanceOhm', 'bleederOhm'],
  value: ({ leakageMa, inputResistanceOhm, bleederOhm }) => (leakageMa * inputResistanceOhm * bleederOhm) / (inputResistanceOhm + bleederOhm) / 1000,
})

/** The largest bleeder in Ω that keeps the input off. */
export const largestBleederForOff = law({
  formula: 'R = 1000·U_off/(Iᵣ − I_off)',
  unit: 'Ω',
  inputs: ['offLimitV', 'leakageMa', 'inputCurrentAtOffMa'],
  conflict: ({ leakageMa, inputCurrentAtOffMa }) =>
    leakageMa <= inputCurrentAtOffMa ? 'no bleeder is needed: the input takes the `leakage`' : undefined,
  value: ({ offLimitV, leakageMa, inputCurrentAtOffMa }) => (1000 * offLimitV) / (leakageMa - inputCurrentAtOffMa),
})

/** The largest bleeder in Ω that gives a 2-wire sensor its minimum load. */
export const largestBleederForLoad = law({
  formula: 'R = 1000·(Uₛ − U_d)/(I_m − I_in)',
  unit: 'Ω',
  inputs: ['supplyV', 'dropV', 'minimumLoadMa', 'inputCurrentMa'],
  conflict: ({ supplyV, dropV, minimumLoadMa, inputCurrentMa }) => {
    if (minimumLoadMa <= inputCurrentMa) return 'no bleeder is needed: the input draws the `minimumLoad`'
    return supplyV <= dropV ? 'the sensor drops more than the `supply`' : undefined
  },
  value: ({ supplyV, dropV, minimumLoadMa, inputCurrentMa }) => (1000 * (supplyV - dropV)) / (minimumLoadMa - inputCurrentMa),
})

/** Heat in W in a bleeder at the highest supply. */
export const bleederPower = law({
  formula: 'P = Uₛ²/R_b',
  unit: 'W',
  inputs: ['supplyV', 'bleederOhm'],
  value: ({ supplyV, bleederOhm }) => supplyV ** 2 / bleederOhm,
})

const ratingsW = [0.125, 0.25, 0.5, 1, 2, 3, 5, 10, 25, 50]

/** The smallest usual rating in W of twice the heat or more (common practice); undefined above 25 W of heat. */
export const resistorRatingW = (heatW: number): number | undefined => ratingsW.find((rating) => atLeast(rating, 2 * heatW))
