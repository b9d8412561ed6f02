import { law } from './law.ts'

/** Energy in joule of a compressed or stretched spring. */
export const springEnergy = law({
  formula: 'E = k·x²/2',
  unit: 'J',
  inputs: ['springRateNPerM', 'deflectionM'],
  value: ({ springRateNPerM, deflectionM }) => (springRateNPerM * deflectionM ** 2) / 2,
})

/** Energy in joule of a twisted spring. */
export const torsionSpringEnergy = law({
  formula: 'E = κ·θ²/2',
  unit: 'J',
  inputs: ['torsionRateNmPerRad', 'angleRad'],
  value: ({ torsionRateNmPerRad, angleRad }) => (torsionRateNmPerRad * angleRad ** 2) / 2,
})
