import { law } from './law.ts'

/** Voltage in volt to which rectified mains charge an unloaded d.c. bus. The tolerance of the supply comes on top. */
export const dcBusPeak = law({
  formula: 'V₀ = √2·V',
  unit: 'V',
  inputs: ['lineVoltageV'],
  value: ({ lineVoltageV }) => Math.SQRT2 * lineVoltageV,
})
