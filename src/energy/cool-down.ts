import { law } from './law.ts'

/**
 * Time in seconds until a hot body has cooled to a temperature; 0 where it is not hotter. One temperature for the
 * whole body: the Biot number is below 0.1, or the time constant was measured.
 */
export const coolDownTime = law({
  formula: 't = τ·ln((T₀ − Tₐ)/(T − Tₐ))',
  unit: 's',
  inputs: ['temperatureK', 'ambientK', 'harmlessK', 'timeConstantS'],
  conflict: ({ ambientK, harmlessK }) => (harmlessK <= ambientK ? 'a body cannot cool to `harmlessAt`: it is not above `ambient`' : undefined),
  value: ({ temperatureK, ambientK, harmlessK, timeConstantS }) =>
    temperatureK <= harmlessK ? 0 : timeConstantS * Math.log((temperatureK - ambientK) / (harmlessK - ambientK)),
})
