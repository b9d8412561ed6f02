import { law } from './law.ts'

/** Fraction of hot water under pressure that turns to steam when the pressure goes. */
export const flashFraction = law({
  formula: 'x = (h₁ − h₂)/r',
  unit: '1',
  inputs: ['liquidEnthalpyJPerKg', 'saturationEnthalpyJPerKg', 'evaporationHeatJPerKg'],
  value: ({ liquidEnthalpyJPerKg, saturationEnthalpyJPerKg, evaporationHeatJPerKg }) =>
    Math.max(0, liquidEnthalpyJPerKg - saturationEnthalpyJPerKg) / evaporationHeatJPerKg,
})
