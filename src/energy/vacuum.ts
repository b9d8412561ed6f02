import { standardAtmospherePa } from './constants.ts'
import { law } from './law.ts'

/** Energy in joule that the atmosphere gives to an empty volume when it flows in: full vacuum, the upper bound. */
export const vacuumEnergy = law({
  formula: 'E = pₐ·V',
  unit: 'J',
  inputs: ['volumeM3'],
  constants: { atmospherePa: standardAtmospherePa },
  value: ({ volumeM3 }) => standardAtmospherePa * volumeM3,
})

/** Force in newton on a round cover. */
export const coverForce = law({
  formula: 'F = Δp·π·d²/4',
  unit: 'N',
  inputs: ['pressureDifferencePa', 'diameterM'],
  value: ({ pressureDifferencePa, diameterM }) => (pressureDifferencePa * Math.PI * diameterM ** 2) / 4,
})
