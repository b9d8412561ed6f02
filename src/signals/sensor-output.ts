import type { Stated } from '../law/law.ts'
import type { CardSense } from './digital-input.ts'
import type { Refused } from './refusals.ts'

/** What switches the signal. `pnp` switches L+, `npn` switches 0 V. */
export type SensorOutput = 'pnp' | 'npn' | '2-wire' | 'dry contact' | 'namur'
export type Card = CardSense | 'namur amplifier'

interface OutputLimits {
  dropV: Stated
  leakageMa: Stated
  minimumLoadMa: Stated
}

const source = 'IEC 60947-5-2, electrical limits'
const memory = (value: number): Stated => ({ value, basis: 'standard', fromMemory: true, source })
const byNature = (value: number): Stated => ({ value, basis: 'standard' })

/** The most that a d.c. switch may drop, leak and ask for, for want of a data sheet. */
export const outputLimits: Readonly<Record<'pnp' | 'npn' | '2-wire' | 'dry contact', OutputLimits>> = {
  pnp: { dropV: memory(3.5), leakageMa: memory(0.5), minimumLoadMa: byNature(0) },
  npn: { dropV: memory(3.5), leakageMa: memory(0.5), minimumLoadMa: byNature(0) },
  '2-wire': { dropV: memory(8), leakageMa: memory(1.5), minimumLoadMa: memory(5) },
  'dry contact': { dropV: byNature(0), leakageMa: byNature(0), minimumLoadMa: byNature(0) },
}

const pairings: Readonly<Record<SensorOutput, readonly Card[]>> = {
  pnp: ['sinking'],
  npn: ['sourcing'],
  '2-wire': ['sinking', 'sourcing'],
  'dry contact': ['sinking', 'sourcing'],
  namur: ['namur amplifier'],
}

/** Undefined where the output can drive the card. A mismatch reads 0 in every state, and damages nothing in most cards. */
export function pairingRefusal(output: SensorOutput, card: Card): Refused | undefined {
  if (pairings[output].includes(card)) return undefined
  if (output === 'pnp' && card === 'sourcing') return { refused: 'pnp-on-sourcing-input' }
  if (output === 'npn' && card === 'sinking') return { refused: 'npn-on-sinking-input' }
  return { refused: 'not-this-pairing' }
}
