import { standardAtmospherePa } from './constants.ts'
import { integral } from './integral.ts'
import { law } from './law.ts'

/** Reference pressure of a sonic conductance. Source: ISO 6358-1 and ISO 8778, standard reference atmosphere. */
const referencePressurePa = 1e5
/** Density of air in kg/m³ and temperature in K of the same atmosphere; gas constant of air in J/(kg·K). */
const reference = { densityKgPerM3: 1.185, temperatureK: 293.15, gasConstant: 287.05 }
const exponent = 1.4
/** Of an ideal nozzle, air. */
const nozzleRatio = (2 / (exponent + 1)) ** (exponent / (exponent - 1))

/** Sonic conductance in m³/(s·Pa) of each m² of effective area: choked flow of an ideal nozzle. */
const conductancePerM2 =
  (Math.sqrt(exponent) * (2 / (exponent + 1)) ** ((exponent + 1) / (2 * (exponent - 1)))) /
  (Math.sqrt(reference.gasConstant * reference.temperatureK) * reference.densityKgPerM3)

const flow = 'r from pₐ/(p + pₐ) to pₐ/(p₁ + pₐ), ψ = 1 up to b, then √(1 − ((r − b)/(1 − b))²)'
const constants = { atmospherePa: standardAtmospherePa, referencePressurePa }

interface Pressures {
  gaugePressurePa: number
  harmlessPressurePa: number
}

/**
 * Time in seconds in which a receiver vents to the air around it through an open vent, 0 where it is not above the
 * pressure that is asked for. The gas keeps its temperature: a fast vent cools it, and takes less time.
 * Source: flow by ISO 6358-1, clause on the flow-rate characteristics; emptied at constant temperature.
 */
export const ventTime = law({
  formula: `t = V/(C·pₙ)·∫dr/(r·ψ), ${flow}`,
  unit: 's',
  inputs: ['volumeM3', 'gaugePressurePa', 'sonicConductanceM3PerSPa', 'criticalRatio', 'harmlessPressurePa'],
  constants,
  value: ({ volumeM3, sonicConductanceM3PerSPa, criticalRatio, ...pressures }) =>
    (volumeM3 / (sonicConductanceM3PerSPa * referencePressurePa)) * timeConstants(pressures, criticalRatio),
})

/** The same through an effective area, which is that of an ideal nozzle. */
export const ventTimeByArea = law({
  formula: `t = V/(C·pₙ)·∫dr/(r·ψ), ${flow}, C = Aₑ·${conductancePerM2.toPrecision(4)} m/(s·Pa), b = ${nozzleRatio.toFixed(3)}`,
  unit: 's',
  inputs: ['volumeM3', 'gaugePressurePa', 'effectiveAreaM2', 'harmlessPressurePa'],
  constants,
  value: ({ volumeM3, effectiveAreaM2, ...pressures }) =>
    (volumeM3 / (conductancePerM2 * effectiveAreaM2 * referencePressurePa)) * timeConstants(pressures, nozzleRatio),
})

/** The integral of the formula. */
function timeConstants({ gaugePressurePa, harmlessPressurePa }: Pressures, b: number): number {
  const ratioAt = (gaugePa: number) => standardAtmospherePa / (gaugePa + standardAtmospherePa)
  const [from, to] = [ratioAt(gaugePressurePa), ratioAt(harmlessPressurePa)]
  if (to <= from) return 0
  const choked = from < b ? Math.log(Math.min(b, to) / from) : 0
  // With r = b + (1 − b)·sin φ the root falls away, which is 0 where the pressure is that of the air.
  const angle = (ratio: number) => Math.asin(Math.min(1, Math.max(0, (ratio - b) / (1 - b))))
  return to <= b ? choked : choked + subsonic(angle(from), angle(to), b)
}

/** ∫(1 − b)/(b + (1 − b)·sin φ)dφ. */
function subsonic(from: number, to: number, b: number): number {
  const a = 1 - b
  if (b >= 0.49) return integral((angle) => a / (b + a * Math.sin(angle)), from, to)
  const root = Math.sqrt(a ** 2 - b ** 2)
  const at = (angle: number) => {
    const half = b * Math.tan(angle / 2)
    return Math.log((half + b ** 2 / (a + root)) / (half + a + root)) / root
  }
  return a * (at(to) - at(from))
}
