import { type Checkout, checkoutOf, hasLimits } from '../../checkout/checkout-of.ts'
import type { Expectation } from '../../checkout/expectation.ts'
import type { CheckoutSupply } from '../../model/checkout-data.ts'
import type { Device, Signal } from '../../model/machine.ts'
import type { SwitchedCircuit } from '../../signals/fault/circuit.ts'
import { targetStates } from '../../signals/fault/row.ts'
import type { RefusalId } from '../../signals/refusals.ts'
import type { Context } from '../context.ts'
import type { Expected, MeterSheet, SwitchedSheet } from '../meter/meter-sheet.ts'
import { basisOfRest } from './expectation-rows.ts'
import { expectedOf } from './expected-of.ts'
import { analogueSheet, outputSheet } from './meter-sheets.ts'

/** A signal of a device with what its readings are held against. */
export interface Metered {
  signal: Signal | undefined
  sheet: MeterSheet
  expectations: readonly Expectation[]
  /** What checkout.yaml or the I/O list lacks for the fault table, by its names there. */
  notComputed: readonly string[]
  refused: RefusalId | undefined
  /** Whether the device keeps people safe: its readings are no approval. */
  isSafetyDevice: boolean
}

/** Whether the technology of a device has something to measure, and nothing of this device is: its page says so. */
export function isUnmeasured({ graph, machine }: Context, device: Device): boolean {
  const checkout = checkoutOf(device, machine, graph)
  return machine.checkout !== undefined && checkout !== undefined && !hasLimits(checkout)
}

/** What can be measured at a device: once for each switched input and each load on an output, else for the device. Empty where there is nothing. */
export function metersOf(context: Context, device: Device): Metered[] {
  const { graph, machine } = context
  const checkout = checkoutOf(device, machine, graph)
  if (!checkout) return []
  const isSafetyDevice = checkout.approval !== undefined
  const [first] = graph.signalsOf(device.tag.value)
  const hasOwnMeter = ({ signal }: Expectation) => checkout.outputs.some((it) => it.signal.signal?.value === signal)
  const own = (signal: Signal | undefined) => checkout.expectations.filter((it) => it.signal === signal?.signal?.value)
  const outputs = checkout.outputs.map(({ signal, circuit }): Metered => {
    const expectations = own(signal)
    return { signal, sheet: outputSheet(context, circuit, checkout, expectations), expectations, notComputed: [], refused: undefined, isSafetyDevice }
  })
  const ofInputs = outputs.length > 0 ? checkout.expectations.filter((it) => !hasOwnMeter(it)) : checkout.expectations
  // Pulses are no state of a target: their own rows take the place of those of a switch.
  const sheet = checkout.circuits.length === 0 || checkout.technology === 'pulse-flow' ? analogueSheet(context, checkout, device, first) : undefined
  if (sheet && (checkout.circuits.length === 0 || sheet.kind === 'flow')) {
    if (outputs.length > 0 || checkout.expectations.length === 0) return outputs
    return [{ signal: first, sheet, expectations: checkout.expectations, notComputed: [], refused: undefined, isSafetyDevice }]
  }
  const inputs = checkout.circuits.map(({ signal, circuit, seen, notComputed = [], refused }, index) => {
    // What is of no input stands with the first.
    const expectations = index === 0 ? ofInputs.filter((it) => !isOfAnother(it, checkout, signal)) : own(signal)
    const expected = expectedOf(context, expectations)
    const sheet: MeterSheet = circuit
      ? {
          ...switchedSheet(circuit, checkout.supply, expected),
          limits: limitsOf(circuit, expectations),
          ...(seen ? { seen } : {}),
          ...(isSafetyDevice ? { isSafetyDevice } : {}),
        }
      : { kind: 'plain', expected }
    return { signal, sheet, expectations, notComputed, refused, isSafetyDevice }
  })
  return [...inputs, ...outputs]
}

const isOfAnother = (it: Expectation, { circuits }: Checkout, signal: Signal): boolean =>
  it.signal !== undefined && it.signal !== signal.signal?.value && circuits.some((other) => other.signal.signal?.value === it.signal)

function switchedSheet(circuit: SwitchedCircuit, supply: CheckoutSupply | undefined, expected: readonly Expected[]): SwitchedSheet {
  const [lowest, highest] = [supply?.lowestV, supply?.highestV]
  if (!lowest && !highest) return { kind: 'switched', circuit, expected }
  const band = { ...(lowest ? { low: lowest.value } : {}), ...(highest ? { high: highest.value } : {}) }
  const basis = [...new Set([lowest, highest].flatMap((it) => it?.from ?? []))]
  return { kind: 'switched', circuit, supply: { band, basis }, expected }
}

/** Limits that are computed with the cable and the card. Those of a sourcing input move with the supply that is measured. */
function limitsOf({ card }: SwitchedCircuit, expectations: readonly Expectation[]): NonNullable<SwitchedSheet['limits']> {
  if (card !== 'sinking') return {}
  const limits = expectations.flatMap((it) => {
    const { meter, state, low, high, unit } = it
    const states = targetStates.filter((target) => state === 'always' || state === target)
    if (!meter || unit !== 'V' || (low === undefined && high === undefined)) return []
    const band = { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) }
    return states.map((target) => [`${meter}.${target}`, { band, basis: basisOfRest(it) }] as const)
  })
  return Object.fromEntries(limits)
}
