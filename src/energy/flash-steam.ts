import { law } from './law.ts'

/** Fraction of hot water under pressure that turns to steam when the pressure goes. */
export const flashFraction = law({
  formula: 'x = (h₁ − h₂)/r',
  unit: '1',
  inputs: ['liquidEnthalpyJPerKg', 'saturationEnthalpyJPerKg', 'evaporationHeatJPerKg'],
  value: ({ liquidEnthalpyJPerKg, saturationEnthalpyJPerKg, evaporationHeatJPerKg }) =>
    Math.max(0, liquidEnthalpyJPerKg - saturationEnthalpyJPerKg) / evaporationHeatJPerKg,
})

/** Water that boils at the pressure of the air. Source: steam table at 1 bar, as in the worked case of the tests. */
export const boilingWater = { saturationEnthalpyJPerKg: 419.1e3, evaporationHeatJPerKg: 2256.4e3 }
