import { standardAtmospherePa as atmospherePa } from './constants.ts'
import { law } from './law.ts'

const constants = { atmospherePa }
const none = (gaugePressurePa: number) => gaugePressurePa === 0

/** Energy in joule of a compressed gas that expands without heat from outside: what a burst sets free. */
export const isentropicGasEnergy = law({
  formula: 'E = (p + pₐ)·V/(k − 1)·(1 − (pₐ/(p + pₐ))^((k − 1)/k))',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3', 'adiabaticExponent'],
  constants,
  value({ gaugePressurePa, volumeM3, adiabaticExponent: k }) {
    const absolutePa = gaugePressurePa + atmospherePa
    // 1 − a^b without the loss of digits near zero.
    return none(gaugePressurePa) ? 0 : ((absolutePa * volumeM3) / (k - 1)) * -Math.expm1(((k - 1) / k) * Math.log(atmospherePa / absolutePa))
  },
})

/** Work in joule of a slow expansion at one temperature, that against the atmosphere included: the upper bound. */
export const isothermalGasWork = law({
  formula: 'E = (p + pₐ)·V·ln((p + pₐ)/pₐ)',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3'],
  constants,
  value: ({ gaugePressurePa, volumeM3 }) => (gaugePressurePa + atmospherePa) * volumeM3 * Math.log1p(gaugePressurePa / atmospherePa),
})

/** Work in joule of a slow expansion at one temperature, without that against the atmosphere. */
export const availableGasWork = law({
  formula: 'E = (p + pₐ)·V·(ln((p + pₐ)/pₐ) − 1 + pₐ/(p + pₐ))',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3'],
  constants,
  value({ gaugePressurePa, volumeM3 }) {
    const absolutePa = gaugePressurePa + atmospherePa
    return Math.max(0, absolutePa * volumeM3 * (Math.log1p(gaugePressurePa / atmospherePa) - gaugePressurePa / absolutePa))
  },
})

/** Energy in joule that raises the pressure at constant volume (Brode): more than an expansion gives back. */
export const brodeGasEnergy = law({
  formula: 'E = p·V/(k − 1)',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3', 'adiabaticExponent'],
  value: ({ gaugePressurePa, volumeM3, adiabaticExponent }) => (gaugePressurePa * volumeM3) / (adiabaticExponent - 1),
})

/** Source: guide of a university for pressure vessels (one secondary text). */
export const highGasEnergyJ = 100_000
