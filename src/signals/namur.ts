import type { Stated } from '../law/law.ts'
import { law } from './law.ts'
import { atLeast, atMost } from './verdict.ts'

/** What the current of a NAMUR circuit says. An inductive switch is in high impedance with a target before it. */
export type NamurState = 'break' | 'possible break' | 'high impedance' | 'no state' | 'low impedance' | 'possible short' | 'short'

export interface NamurLimits {
  /** Below it the line is broken. */
  certainBreakMa: Stated
  /** Below it an amplifier may report a break. */
  possibleBreakMa: Stated
  highImpedanceMa: Stated
  lowImpedanceMa: Stated
  /** Above it an amplifier may report a short circuit. */
  possibleShortMa: Stated
  /** Above it the line is shorted. */
  certainShortMa: Stated
}

const source = 'IEC 60947-5-6:1999'
const memory = (value: number): Stated => ({ value, basis: 'standard', fromMemory: true, source })

/** Amplifiers differ in their fault limits: one that states its own replaces the four. */
export const namurLimits: NamurLimits = {
  certainBreakMa: memory(0.05),
  possibleBreakMa: memory(0.35),
  highImpedanceMa: { value: 1.2, basis: 'standard', source },
  lowImpedanceMa: { value: 2.1, basis: 'standard', source },
  possibleShortMa: memory(6),
  certainShortMa: memory(7.45),
}

/** The state of a circuit from its current in mA; undefined for what is no finite number. */
export function namurState(currentMa: number, limits: NamurLimits = namurLimits): NamurState | undefined {
  if (!Number.isFinite(currentMa)) return undefined
  if (!atLeast(currentMa, limits.certainBreakMa.value)) return 'break'
  if (!atLeast(currentMa, limits.possibleBreakMa.value)) return 'possible break'
  if (atMost(currentMa, limits.highImpedanceMa.value)) return 'high impedance'
  if (!atLeast(currentMa, limits.lowImpedanceMa.value)) return 'no state'
  if (atMost(currentMa, limits.possibleShortMa.value)) return 'low impedance'
  return atMost(currentMa, limits.certainShortMa.value) ? 'possible short' : 'short'
}

/** The amplifier that the standard supposes. */
export const namurAmplifier = {
  openVoltageV: { value: 8.2, basis: 'standard', source },
  sourceResistanceOhm: { value: 1000, basis: 'standard', source },
} as const satisfies Record<string, Stated>

/** Current in mA through a circuit of this resistance. */
export const namurCurrent = law({
  formula: 'I = 1000·U₀/(Rₛ + R)',
  unit: 'mA',
  inputs: ['openVoltageV', 'sourceResistanceOhm', 'circuitResistanceOhm'],
  value: ({ openVoltageV, sourceResistanceOhm, circuitResistanceOhm }) => (1000 * openVoltageV) / (sourceResistanceOhm + circuitResistanceOhm),
})

/** Current in mA of a closed contact with a resistor in series; the one in parallel is bridged. */
export const closedContactCurrent = law({
  formula: 'I = 1000·U₀/(Rₛ + R₁)',
  unit: 'mA',
  inputs: ['openVoltageV', 'sourceResistanceOhm', 'seriesResistanceOhm'],
  value: ({ openVoltageV, sourceResistanceOhm, seriesResistanceOhm }) => (1000 * openVoltageV) / (sourceResistanceOhm + seriesResistanceOhm),
})

/** Current in mA of an open contact with one resistor in series and one in parallel to it. */
export const openContactCurrent = law({
  formula: 'I = 1000·U₀/(Rₛ + R₁ + R₂)',
  unit: 'mA',
  inputs: ['openVoltageV', 'sourceResistanceOhm', 'seriesResistanceOhm', 'parallelResistanceOhm'],
  value: ({ openVoltageV, sourceResistanceOhm, seriesResistanceOhm, parallelResistanceOhm }) =>
    (1000 * openVoltageV) / (sourceResistanceOhm + seriesResistanceOhm + parallelResistanceOhm),
})
