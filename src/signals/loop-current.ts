import type { Stated } from '../law/law.ts'
import { atLeast, atMost } from './verdict.ts'

/** What a 4–20 mA current says. `saturated`: beyond the range and still measuring. `no state`: neither value nor failure. */
export type LoopState = 'failure low' | 'saturated low' | 'measuring' | 'saturated high' | 'failure high' | 'no state'

interface LoopLimits {
  failureLowToMa: Stated
  measuringFromMa: Stated
  measuringToMa: Stated
  failureHighFromMa: Stated
}

const found = (value: number): Stated => ({ value, basis: 'standard', source: 'NAMUR NE 43' })

/** A transmitter with other failure currents has them in its data sheet. */
export const loopLimits: LoopLimits = {
  failureLowToMa: found(3.6),
  measuringFromMa: found(3.8),
  measuringToMa: found(20.5),
  failureHighFromMa: found(21),
}

/** The state of a 4–20 mA loop from its current; undefined for what is no finite number. */
export function loopState(currentMa: number, limits: LoopLimits = loopLimits): LoopState | undefined {
  if (!Number.isFinite(currentMa)) return undefined
  if (atMost(currentMa, limits.failureLowToMa.value)) return 'failure low'
  if (atLeast(currentMa, limits.failureHighFromMa.value)) return 'failure high'
  if (!atLeast(currentMa, limits.measuringFromMa.value) || !atMost(currentMa, limits.measuringToMa.value)) return 'no state'
  if (!atLeast(currentMa, 4)) return 'saturated low'
  return atMost(currentMa, 20) ? 'measuring' : 'saturated high'
}
