import { standardGravityMPerS2 } from './constants.ts'
import { law } from './law.ts'

const constants = { gravityMPerS2: standardGravityMPerS2 }

/** Energy in joule of a load that can fall from a height. */
export const raisedLoadEnergy = law({
  formula: 'E = m·g·h',
  unit: 'J',
  inputs: ['massKg', 'heightM'],
  constants,
  value: ({ massKg, heightM }) => massKg * standardGravityMPerS2 * heightM,
})

/** Speed in m/s at which it arrives. */
export const impactSpeed = law({
  formula: 'v = √(2·g·h)',
  unit: 'm/s',
  inputs: ['heightM'],
  constants,
  value: ({ heightM }) => Math.sqrt(2 * standardGravityMPerS2 * heightM),
})
