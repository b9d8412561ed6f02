import type { Stated } from '../law/law.ts'
import { law } from './law.ts'

/** Class 2: stranded for fixed laying. Class 5: flexible. */
export type ConductorClass = 'class 2' | 'class 5'

const classes: Readonly<Record<ConductorClass, Readonly<Record<string, number>>>> = {
  'class 2': { '0.5': 36, '0.75': 24.5, '1': 18.1, '1.5': 12.1, '2.5': 7.41, '4': 4.61, '6': 3.08, '10': 1.83, '16': 1.15 },
  'class 5': {
    '0.14': 138,
    '0.25': 79,
    '0.34': 56,
    '0.5': 39,
    '0.75': 26,
    '1': 19.5,
    '1.5': 13.3,
    '2.5': 7.98,
    '4': 4.95,
    '6': 3.3,
    '10': 1.91,
    '16': 1.21,
  },
}

/** Cross-sections in mm² of a class, rising. */
export const conductorSizesMm2 = (conductor: ConductorClass): number[] =>
  Object.keys(classes[conductor])
    .map(Number)
    .sort((a, b) => a - b)

/**
 * The most that a copper conductor may have, in Ω/km at 20 °C; undefined for a size that is not in the table.
 * Source: IEC 60228; below 0.5 mm² its national equivalents, the higher figure of tinned wire.
 */
export function conductorOhmPerKm(areaMm2: number, conductor: ConductorClass): Stated | undefined {
  const value = classes[conductor][String(areaMm2)]
  return value === undefined ? undefined : { value, basis: 'standard', source: 'IEC 60228, resistance of conductors' }
}

/** Annealed copper at 20 °C. The number of the standard is from memory, the values are not. */
export const copperPerK: Stated = { value: 0.00393, basis: 'standard', source: 'IEC 60028' }
export const copperResistivity: Stated = { value: 0.017241, basis: 'standard', source: 'IEC 60028' }

/** Resistance in Ω of one conductor, one way. */
export const wireResistance = law({
  formula: 'R = L·r/1000',
  unit: 'Ω',
  inputs: ['lengthM', 'resistanceOhmPerKm'],
  value: ({ lengthM, resistanceOhmPerKm }) => (lengthM * resistanceOhmPerKm) / 1000,
})

/** Ω/km at the temperature of the conductor, from that at 20 °C. */
export const warmResistance = law({
  formula: 'r₁ = r·(1 + α·(t − 20))',
  unit: 'Ω/km',
  inputs: ['resistanceOhmPerKm', 'copperPerK', 'conductorC'],
  conflict: ({ copperPerK, conductorC }) =>
    1 + copperPerK * (conductorC - 20) <= 0 ? 'the straight line does not hold so far below 20 °C' : undefined,
  value: ({ resistanceOhmPerKm, copperPerK, conductorC }) => resistanceOhmPerKm * (1 + copperPerK * (conductorC - 20)),
})

/** Cross-section in mm² of a solid wire of an American gauge; 0 is gauge 1/0. Source: ASTM B258. */
export const gaugeArea = law({
  formula: 'A = (π/4)·(0.127·92^((36 − g)/39))²',
  unit: 'mm²',
  inputs: ['gauge'],
  value: ({ gauge }) => (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2,
})

/** Ω/km of a solid wire at 20 °C. */
export const solidResistance = law({
  formula: 'r = 1000·ρ/A',
  unit: 'Ω/km',
  inputs: ['resistivityOhmMm2PerM', 'areaMm2'],
  value: ({ resistivityOhmMm2PerM, areaMm2 }) => (1000 * resistivityOhmMm2PerM) / areaMm2,
})
