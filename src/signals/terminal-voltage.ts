import type { Result, Stated } from '../law/law.ts'
import type { CardSense } from './digital-input.ts'
import { type Given, law } from './law.ts'
import type { Refused } from './refusals.ts'
import { pairingRefusal, type SensorOutput } from './sensor-output.ts'

const onInputs = ['supplyV', 'dropV', 'noLoadCurrentMa', 'inputCurrentMa', 'supplyWireOhm', 'signalWireOhm'] as const
const offInputs = ['supplyV', 'leakageMa', 'inputResistanceOhm'] as const
type OnValues = Readonly<Record<(typeof onInputs)[number], number>>

/** What sensor and cable keep from the input, in V. The current of the sensor itself runs in its supply wire only. */
function lostV({ dropV, noLoadCurrentMa, inputCurrentMa, supplyWireOhm, signalWireOhm }: Omit<OnValues, 'supplyV'>): number {
  return dropV + ((noLoadCurrentMa + inputCurrentMa) * supplyWireOhm + inputCurrentMa * signalWireOhm) / 1000
}

/** What sensor and cable keep from an input while the sensor conducts, in V: at either kind of card. */
export const keptFromInput = law({
  formula: 'ΔU = U_d + (I₀ + I_in)·R_s + I_in·R_w',
  unit: 'V',
  inputs: ['dropV', 'noLoadCurrentMa', 'inputCurrentMa', 'supplyWireOhm', 'signalWireOhm'],
  value: lostV,
})

const lostTooMuch = (values: OnValues) => (lostV(values) > values.supplyV ? 'sensor and cable drop more than the `supply`' : undefined)

const sinkingOn = law({
  formula: 'U = Uₛ − U_d − (I₀ + I_in)·R_s − I_in·R_w',
  unit: 'V',
  inputs: onInputs,
  conflict: lostTooMuch,
  value: (values) => values.supplyV - lostV(values),
})
const sourcingOn = law({
  formula: 'U = U_d + (I₀ + I_in)·R_s + I_in·R_w',
  unit: 'V',
  inputs: onInputs,
  conflict: lostTooMuch,
  value: lostV,
})

/** What the leakage of the sensor leaves across the input, in V; the supply at most. */
const leakageV = ({ supplyV, leakageMa, inputResistanceOhm }: Readonly<Record<(typeof offInputs)[number], number>>) =>
  Math.min(supplyV, (leakageMa * inputResistanceOhm) / 1000)

const sinkingOff = law({ formula: 'U = min(Uₛ, Iᵣ·R_in)', unit: 'V', inputs: offInputs, value: leakageV })
const sourcingOff = law({
  formula: 'U = Uₛ − min(Uₛ, Iᵣ·R_in)',
  unit: 'V',
  inputs: offInputs,
  value: (values) => values.supplyV - leakageV(values),
})

export type TerminalCircuit = Given<(typeof onInputs)[number] | (typeof offInputs)[number]>

/** Voltages in V between the terminal of the input and 0 V. */
export interface TerminalVoltages {
  /** While the sensor conducts. */
  on: Result
  off: Result
}

const nothing: Stated = { value: 0, basis: 'standard' }
/** What an output does not have by its nature, unless the caller states it: a contact that has grown poor drops. */
const absent: Readonly<Record<SensorOutput, Given<'dropV' | 'noLoadCurrentMa' | 'leakageMa'>>> = {
  pnp: {},
  npn: {},
  namur: {},
  '2-wire': { noLoadCurrentMa: nothing },
  'dry contact': { noLoadCurrentMa: nothing, dropV: nothing, leakageMa: nothing },
}

/**
 * What an input terminal should read, from the supply that was measured. Each wire in Ω one way: `supplyWire` from
 * the rail to the sensor, `signalWire` from the sensor to the card.
 */
export function terminalVoltages(output: SensorOutput, card: CardSense, circuit: TerminalCircuit): TerminalVoltages | Refused {
  const refused = pairingRefusal(output, card)
  if (refused) return refused
  const stated = Object.fromEntries(Object.entries(circuit).filter(([, quantity]) => quantity !== undefined))
  const given: TerminalCircuit = { ...absent[output], ...stated }
  return card === 'sinking' ? { on: sinkingOn(given), off: sinkingOff(given) } : { on: sourcingOn(given), off: sourcingOff(given) }
}
