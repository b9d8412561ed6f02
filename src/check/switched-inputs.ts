import { outputOf } from '../checkout/circuit-of.ts'
import type { Wired } from '../checkout/wiring.ts'
import { type InputLimits, type InputType, inputLimits } from '../signals/digital-input.ts'
import { pairingRefusal, type SensorOutput } from '../signals/sensor-output.ts'
import type { Located } from '../source/place.ts'
import type { DeviceCheckout } from './checkouts.ts'

/** A switched signal on a card whose type is given, and that goes with the output of the device. */
export interface SwitchedInput {
  wired: Wired
  checkout: DeviceCheckout['checkout']
  output: Exclude<SensorOutput, 'namur'>
  type: Located<InputType>
  limits: InputLimits
  /** For a message: card `DI1`, which is Type 1. */
  cardName: string
}

/** Every switched input of the machine that can be judged. */
export function* switchedInputs(all: readonly DeviceCheckout[]): Iterable<SwitchedInput> {
  for (const { checkout, wired: signals } of all)
    for (const wired of signals) {
      const { signal, ofCard } = wired
      const output = outputOf(wired)
      const [type, sense] = [ofCard.placedChoice('inputType'), ofCard.choice('sense')]
      if (!signal || !type || !sense || output === undefined || output === 'namur') continue
      // A pair that does not go together is reported, and what it would read hangs on it.
      if (!/^(DI|SDI|CNT)$/.test(signal.type.value) || pairingRefusal(output, sense)) continue
      yield { wired, checkout, output, type, limits: inputLimits[type.value], cardName: `card \`${signal.card?.value}\`, which is ${type.value},` }
    }
}
