import { law } from './law.ts'

/** Pressures of this file are absolute. `polytropicExponent` is 1 for slow changes (over about 3 min) and 1.4 for fast ones. */
type Values = Readonly<Record<'prechargePa' | 'polytropicExponent', number>>
const remaining = ({ prechargePa, polytropicExponent }: Values, pressurePa: number) => (prechargePa / pressurePa) ** (1 / polytropicExponent)

/** Volume in m³ of the gas at a pressure. */
export const gasVolume = law({
  formula: 'V = V₀·(p₀/p₂)^(1/n)',
  unit: 'm³',
  inputs: ['volumeM3', 'prechargePa', 'highestPressurePa', 'polytropicExponent'],
  value: ({ volumeM3, highestPressurePa, ...gas }) => volumeM3 * remaining(gas, highestPressurePa),
})

/** Oil in m³ that flows out between two pressures. */
export const usableOil = law({
  formula: 'ΔV = V₀·((p₀/p₁)^(1/n) − (p₀/p₂)^(1/n))',
  unit: 'm³',
  inputs: ['volumeM3', 'prechargePa', 'lowestPressurePa', 'highestPressurePa', 'polytropicExponent'],
  conflict: ({ lowestPressurePa, highestPressurePa }) =>
    highestPressurePa < lowestPressurePa ? '`highestPressure` is below `lowestPressure`' : undefined,
  value: ({ volumeM3, lowestPressurePa, highestPressurePa, ...gas }) =>
    volumeM3 * (remaining(gas, lowestPressurePa) - remaining(gas, highestPressurePa)),
})

/** Energy in joule that the gas of a charged accumulator holds above its precharge. */
export const accumulatorEnergy = law({
  formula: 'E = (p₂·V₂ − p₀·V₀)/(n − 1), with V₂ = V₀·(p₀/p₂)^(1/n); for n = 1: E = p₀·V₀·ln(p₂/p₀)',
  unit: 'J',
  inputs: ['volumeM3', 'prechargePa', 'highestPressurePa', 'polytropicExponent'],
  conflict: ({ prechargePa, highestPressurePa }) => (highestPressurePa < prechargePa ? '`highestPressure` is below `precharge`' : undefined),
  value({ volumeM3, prechargePa, highestPressurePa, polytropicExponent: n }) {
    // p₂·V₂ − p₀·V₀ is p₀·V₀·((p₂/p₀)^((n−1)/n) − 1): near n = 1 the difference itself has no digits left.
    const ratio = Math.log(highestPressurePa / prechargePa)
    return prechargePa * volumeM3 * (n === 1 ? ratio : Math.expm1(((n - 1) / n) * ratio) / (n - 1))
  },
})
