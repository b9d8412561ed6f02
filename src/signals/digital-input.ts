import type { Stated } from '../law/law.ts'
import { atLeast, atMost } from './verdict.ts'

export type InputType = 'Type 1' | 'Type 2' | 'Type 3'
export type CardSense = 'sinking' | 'sourcing'
/** `no state`: between the limits the card may read either. `out of range`: no voltage that the card is made for. */
export type InputState = 'on' | 'off' | 'no state' | 'out of range'

export interface InputLimits {
  lowestV: Stated
  offToV: Stated
  onFromV: Stated
  highestV: Stated
  /** Current up to which the input must stay off. */
  ignoredMa: Stated
  /** Current without which the input need not come on. */
  neededMa: Stated
  highestMa: Stated
}

const source = 'IEC 61131-2, 24 V d.c. digital inputs'
const found = (value: number): Stated => ({ value, basis: 'standard', source })
const memory = (value: number): Stated => ({ value, basis: 'standard', fromMemory: true, source })

/** Limits of a 24 V d.c. sinking input; those of a sourcing one are their mirror about the supply. */
export const inputLimits: Readonly<Record<InputType, InputLimits>> = {
  'Type 1': {
    lowestV: found(-3),
    offToV: found(5),
    onFromV: found(15),
    highestV: found(30),
    ignoredMa: memory(0.5),
    neededMa: found(2),
    highestMa: memory(15),
  },
  'Type 2': {
    lowestV: memory(-3),
    offToV: memory(5),
    onFromV: memory(11),
    highestV: memory(30),
    ignoredMa: memory(2),
    neededMa: memory(6),
    highestMa: memory(30),
  },
  'Type 3': {
    lowestV: found(-3),
    offToV: found(5),
    onFromV: found(11),
    highestV: found(30),
    ignoredMa: found(1.5),
    neededMa: found(2),
    highestMa: memory(15),
  },
}

/**
 * What a sinking input makes of the voltage between its terminal and the 0 V of the card. With the current in mA
 * it also judges that: too little does not switch it on.
 */
export function inputState(voltageV: number, limits: InputLimits, currentMa?: number): InputState | undefined {
  if (!Number.isFinite(voltageV) || (currentMa !== undefined && !Number.isFinite(currentMa))) return undefined
  if (!atLeast(voltageV, limits.lowestV.value) || !atMost(voltageV, limits.highestV.value)) return 'out of range'
  if (atMost(voltageV, limits.offToV.value)) return 'off'
  if (!atLeast(voltageV, limits.onFromV.value)) return currentMa !== undefined && atMost(currentMa, limits.ignoredMa.value) ? 'off' : 'no state'
  return currentMa === undefined || atLeast(currentMa, limits.neededMa.value) ? 'on' : 'no state'
}

/** The same for a sourcing input: the voltage between its terminal and 0 V, with the supply that the card has. */
export function sourcingInputState(voltageV: number, supplyV: number, limits: InputLimits, currentMa?: number): InputState | undefined {
  return inputState(supplyV - voltageV, limits, currentMa)
}

interface TerminalLimits {
  /** A sinking input is on from this voltage to 0 V, a sourcing one up to it. */
  onV: number
  /** A sinking input is off up to this voltage, a sourcing one from it. */
  offV: number
}

/** The two limits in V at the terminal, against 0 V. */
export function terminalLimits(card: CardSense, limits: InputLimits, supplyV: number): TerminalLimits {
  const [onV, offV] = [limits.onFromV.value, limits.offToV.value]
  return card === 'sinking' ? { onV, offV } : { onV: supplyV - onV, offV: supplyV - offV }
}
