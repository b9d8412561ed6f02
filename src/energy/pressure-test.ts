import { law } from './law.ts'

/** Source of all in this file: ASME PCC-2, article 501, mandatory appendices II and III (air or nitrogen). */
const atmospherePa = 101_000
const jPerKgTnt = 4_266_920
const tiers = [
  { energyJ: 135.5e6, distanceM: 30 },
  { energyJ: 271e6, distanceM: 60 },
] as const

/** Energy in joule of a vessel under a pressure test with gas, equation II-2. */
export const pressureTestEnergy = law({
  formula: 'E = 2.5·(p + pₐ)·V·(1 − (pₐ/(p + pₐ))^0.286)',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3'],
  constants: { atmospherePa },
  value: ({ gaugePressurePa, volumeM3 }) =>
    2.5 * (gaugePressurePa + atmospherePa) * volumeM3 * -Math.expm1(-0.286 * Math.log1p(gaugePressurePa / atmospherePa)),
})

/** Mass of TNT in kilogram with this energy, equation II-3. */
export const tntMass = law({
  formula: 'm = E/4 266 920',
  unit: 'kg',
  inputs: ['energyJ'],
  value: ({ energyJ }) => energyJ / jPerKgTnt,
})

interface Scaled {
  energyJ: number
  scaledDistance: number
}

const tooNear = ({ scaledDistance }: Scaled) => (scaledDistance < 20 ? '`scaledDistance` must be at least 20 m/kg^(1/3)' : undefined)
const byScale = ({ energyJ, scaledDistance }: Scaled) => scaledDistance * Math.cbrt((2 * energyJ) / jPerKgTnt)

/** Distance in metre by the scaled distance, equation III-1, without the least distances. */
export const scaledTestDistance = law({
  formula: 'R = Rₛ·(2·E/4 266 920)^(1/3)',
  unit: 'm',
  inputs: ['energyJ', 'scaledDistance'],
  conflict: tooNear,
  value: byScale,
})

/** Distance in metre to keep in the test: by equation III-1, and not under the least distance of its tier of energy. */
export const testDistance = law({
  formula: 'R = max(least distance, Rₛ·(2·E/4 266 920)^(1/3))',
  unit: 'm',
  inputs: ['energyJ', 'scaledDistance'],
  conflict: tooNear,
  value: (values) => Math.max(tiers.find(({ energyJ }) => values.energyJ <= energyJ)?.distanceM ?? 60, byScale(values)),
})
