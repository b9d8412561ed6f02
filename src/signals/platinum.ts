import type { Result } from '../law/law.ts'
import { invert } from './invert.ts'
import { type Given, law } from './law.ts'
import { within } from './verdict.ts'

/** Source: IEC 60751:2022. */
const [a, b, c] = [3.9083e-3, -5.775e-7, -4.183e-12]
const [coldestC, hottestC] = [-200, 850]

/** Temperatures in °C over which the equation holds. */
export const platinumRangeC = { low: coldestC, high: hottestC } as const

const formula = 'R = R₀·(1 + A·t + B·t² + C·(t − 100)·t³), C = 0 from 0 °C on'

const ratio = (t: number) => 1 + a * t + b * t * t + (t < 0 ? c * (t - 100) * t ** 3 : 0)
const slope = (t: number) => a + 2 * b * t + (t < 0 ? c * (4 * t ** 3 - 300 * t * t) : 0)

const outside = ({ temperatureC }: { temperatureC: number }) =>
  within(temperatureC, platinumRangeC) ? undefined : `the equation holds from ${coldestC} to ${hottestC} °C`

/** Resistance in Ω at a temperature from −200 to 850 °C; `iceResistance` is 100 Ω for a Pt100. Source: IEC 60751:2022. */
export const platinumResistance = law({
  formula,
  unit: 'Ω',
  inputs: ['temperatureC', 'iceResistanceOhm'],
  conflict: outside,
  value: ({ temperatureC, iceResistanceOhm }) => iceResistanceOhm * ratio(temperatureC),
})

/** Rise of the resistance in Ω/K. */
export const platinumSlope = law({
  formula: 'dR/dt',
  unit: 'Ω/K',
  inputs: ['temperatureC', 'iceResistanceOhm'],
  conflict: outside,
  value: ({ temperatureC, iceResistanceOhm }) => iceResistanceOhm * slope(temperatureC),
})

/** Temperature in °C, from −200 to 850, for a resistance. Source: the inverse of IEC 60751:2022. */
export const platinumTemperature = law({
  formula: `t from ${formula}`,
  unit: '°C',
  inputs: ['elementOhm', 'iceResistanceOhm'],
  conflict: ({ elementOhm, iceResistanceOhm }) =>
    within(elementOhm / iceResistanceOhm, { low: ratio(coldestC), high: ratio(hottestC) })
      ? undefined
      : `no temperature from ${coldestC} to ${hottestC} °C has this \`resistance\``,
  value: ({ elementOhm, iceResistanceOhm }) => invert(ratio, elementOhm / iceResistanceOhm, coldestC, hottestC),
})

/** How a resistance thermometer is connected. */
export type Leads = '2-wire' | '3-wire' | '4-wire'

const leadInputs = ['leadOhm', 'temperatureC', 'iceResistanceOhm'] as const

const twoWireError = law({
  formula: 'Δt = 2·R_l/(dR/dt)',
  unit: 'K',
  inputs: leadInputs,
  conflict: outside,
  value: ({ leadOhm, temperatureC, iceResistanceOhm }) => (2 * leadOhm) / (iceResistanceOhm * slope(temperatureC)),
})
const threeWireError = law({
  formula: 'Δt = m·R_l/(dR/dt)',
  unit: 'K',
  inputs: ['leadMismatch', ...leadInputs],
  conflict: outside,
  value: ({ leadMismatch, leadOhm, temperatureC, iceResistanceOhm }) => (leadMismatch * leadOhm) / (iceResistanceOhm * slope(temperatureC)),
})
const fourWireError = law({ formula: 'Δt = 0', unit: 'K', inputs: [], value: () => 0 })

/** How much too hot the leads make a reading, in K. `lead` is one wire; `leadMismatch` the share by which two differ. */
export function leadError(leads: Leads, given: Given<(typeof leadInputs)[number] | 'leadMismatch'>): Result {
  return leads === '2-wire' ? twoWireError(given) : leads === '3-wire' ? threeWireError(given) : fourWireError({})
}

/** The element of a 3-wire thermometer in Ω: one reading across it, one across the pair of equal colour. */
export const elementOfThreeWires = law({
  formula: 'R = R_across − R_pair',
  unit: 'Ω',
  inputs: ['acrossOhm', 'pairOhm'],
  conflict: ({ acrossOhm, pairOhm }) => (pairOhm > acrossOhm ? 'the pair of leads has more than leads and element together' : undefined),
  value: ({ acrossOhm, pairOhm }) => acrossOhm - pairOhm,
})
