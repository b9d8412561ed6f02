import { law } from './law.ts'

/** Energy in a charged capacitor, in joule. */
export const capacitorEnergy = law({
  formula: 'E = C·V₀²/2',
  unit: 'J',
  inputs: ['capacitanceF', 'startVoltageV'],
  value: ({ capacitanceF, startVoltageV }) => (capacitanceF * startVoltageV ** 2) / 2,
})

/** Charge of a capacitor, in coulomb. */
export const capacitorCharge = law({
  formula: 'Q = C·V₀',
  unit: 'C',
  inputs: ['capacitanceF', 'startVoltageV'],
  value: ({ capacitanceF, startVoltageV }) => capacitanceF * startVoltageV,
})
