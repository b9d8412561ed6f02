import type { Stated } from '../law/law.ts'
import { law } from './law.ts'

/** Source: ISO 80000-3, standard acceleration of free fall. */
export const standardGravity: Stated = { value: 9.80665, basis: 'standard', source: 'ISO 80000-3' }

/** Pressure in kPa at the bottom of a liquid, above that on its surface. */
export const hydrostaticPressure = law({
  formula: 'p = ρ·g·h/1000',
  unit: 'kPa',
  inputs: ['densityKgPerM3', 'gravityMPerS2', 'liquidM'],
  value: ({ densityKgPerM3, gravityMPerS2, liquidM }) => (densityKgPerM3 * gravityMPerS2 * liquidM) / 1000,
})

/** Height in m of a liquid from the pressure at its bottom. */
export const liquidHeight = law({
  formula: 'h = 1000·p/(ρ·g)',
  unit: 'm',
  inputs: ['pressureKpa', 'densityKgPerM3', 'gravityMPerS2'],
  value: ({ pressureKpa, densityKgPerM3, gravityMPerS2 }) => (1000 * pressureKpa) / (densityKgPerM3 * gravityMPerS2),
})

/** Speed of sound in dry air in m/s, as commonly approximated near room temperature; the bounds are chosen here. */
const soundMPerS = (airC: number) => 331.3 + 0.606 * airC
const tooCold = ({ airC }: { airC: number }) =>
  airC < -50 || airC > 100 ? 'the approximation of the speed of sound holds from −50 to 100 °C' : undefined

/** Time in ms from pulse to echo. */
export const echoTime = law({
  formula: 't = 1000·2·d/(331.3 + 0.606·θ)',
  unit: 'ms',
  inputs: ['rangeM', 'airC'],
  conflict: tooCold,
  value: ({ rangeM, airC }) => (2000 * rangeM) / soundMPerS(airC),
})

/** Distance in m from the time between pulse and echo. */
export const echoDistance = law({
  formula: 'd = t·(331.3 + 0.606·θ)/2000',
  unit: 'm',
  inputs: ['echoMs', 'airC'],
  conflict: tooCold,
  value: ({ echoMs, airC }) => (echoMs * soundMPerS(airC)) / 2000,
})
