import { standardAtmospherePa } from './constants.ts'
import { integral } from './integral.ts'
import { law } from './law.ts'

/**
 * Time in seconds in which an accumulator empties its oil to the tank through an orifice, from its highest pressure
 * until the gas has its precharge. Pressures are absolute, the tank is open. The precharge itself stays in the gas.
 * Source: flow through a sharp-edged orifice, Q = μ·A·√(2·Δp/ρ), in textbooks of hydraulics; gas by p·V^n = constant.
 */
export const oilDischargeTime = law({
  formula: 't = ∫dV/(μ·A·√(2·(p − pₐ)/ρ)), p = p₀·(V₀/V)^n, V from V₀·(p₀/p₂)^(1/n) to V₀',
  unit: 's',
  inputs: ['volumeM3', 'prechargePa', 'highestPressurePa', 'polytropicExponent', 'orificeAreaM2', 'dischargeCoefficient', 'densityKgPerM3'],
  constants: { atmospherePa: standardAtmospherePa },
  conflict({ prechargePa, highestPressurePa }) {
    if (highestPressurePa < prechargePa) return '`highestPressure` is below `precharge`'
    return prechargePa <= standardAtmospherePa ? '`precharge` must be above the pressure of the tank' : undefined
  },
  value({ volumeM3, prechargePa, highestPressurePa, polytropicExponent: n, orificeAreaM2, dischargeCoefficient, densityKgPerM3 }) {
    const share = (prechargePa / highestPressurePa) ** (1 / n)
    const slowness = (of: number) => 1 / Math.sqrt((2 * (prechargePa * of ** -n - standardAtmospherePa)) / densityKgPerM3)
    return (volumeM3 / (dischargeCoefficient * orificeAreaM2)) * integral(slowness, share, 1)
  },
})
