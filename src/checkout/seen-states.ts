import type { CheckoutTechnology } from '../model/schema/checkout-values.ts'
import type { SwitchedCircuit } from '../signals/fault/circuit.ts'
import type { SeenStates } from '../signals/fault/seen-state.ts'
import type { Wired } from './wiring.ts'

/** Devices without a target before them, whatever their output is. */
const actuated: ReadonlySet<CheckoutTechnology> = new Set([
  'pressure-switch',
  'temperature-switch',
  'float-switch',
  'flow-switch',
  'drive',
  'contactor',
])

/** What the two states of a switched signal are to a reader; undefined where they are a target and none. */
export function seenStates(technology: CheckoutTechnology, { signal }: Wired, { output, contact }: SwitchedCircuit): SeenStates | undefined {
  if (technology === 'pulse-flow') return { target: 'pulse', none: 'between pulses' }
  // A channel of a safety device is on while all is well, by whichever contact.
  const isChannel = signal?.type.value === 'SDI'
  if (isChannel && technology === 'safety-interlock') return onIn(contact, 'guard closed', 'guard open')
  if (isChannel && technology === 'light-curtain') return onIn(contact, 'field free', 'field interrupted')
  return output === 'dry contact' || actuated.has(technology) ? { target: 'actuated', none: 'at rest' } : undefined
}

function onIn(contact: SwitchedCircuit['contact'], on: SeenStates['target'], off: SeenStates['target']): SeenStates {
  return contact === 'NO' ? { target: on, none: off } : { target: off, none: on }
}
