import { type Checkout, checkoutOf } from '../../checkout/checkout-of.ts'
import type { Expectation } from '../../checkout/expectation.ts'
import { temperatureC } from '../../checkout/temperature.ts'
import { type Values, valuesOfDevice } from '../../checkout/values-of.ts'
import type { CheckoutSupply } from '../../model/checkout-data.ts'
import type { Device, Signal } from '../../model/machine.ts'
import type { SwitchedCircuit } from '../../signals/fault/circuit.ts'
import { targetStates } from '../../signals/fault/row.ts'
import { classRangesC } from '../../signals/platinum-class.ts'
import type { RefusalId } from '../../signals/refusals.ts'
import { unitOf } from '../../signals/unit.ts'
import type { Context } from '../context.ts'
import type { Expected, MeterSheet, PlatinumSheet, SwitchedSheet } from '../meter/meter-sheet.ts'
import { basisOfRest, expectationName } from './expectation-rows.ts'

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

/** What can be measured at a device: once for each switched input, else for the device. Empty where there is nothing. */
export function metersOf(context: Context, device: Device): Metered[] {
  const { graph, machine } = context
  const checkout = checkoutOf(device, machine, graph)
  if (!checkout) return []
  const isSafetyDevice = checkout.approval !== undefined
  const [first] = graph.signalsOf(device.tag.value)
  const own = (signal: Signal | undefined, isFirst: boolean) =>
    checkout.expectations.filter((it) => (it.signal === undefined ? isFirst : it.signal === signal?.signal?.value))
  if (checkout.circuits.length === 0) {
    const sheet = analogueSheet(context, checkout, device, first)
    if (checkout.expectations.length === 0) return []
    return [{ signal: first, sheet, expectations: checkout.expectations, notComputed: [], refused: undefined, isSafetyDevice }]
  }
  return checkout.circuits.map(({ signal, circuit, notComputed = [], refused }, index) => {
    // Outputs of the device have no meter of their own: they stand with its first input.
    const expectations = index === 0 ? checkout.expectations.filter((it) => !isOfAnother(it, checkout, signal)) : own(signal, false)
    const expected = expectedOf(context, expectations)
    const sheet: MeterSheet = circuit
      ? { ...switchedSheet(circuit, checkout.supply, expected), limits: limitsOf(circuit, expectations) }
      : { kind: 'plain', expected }
    return { signal, sheet, expectations, notComputed, refused, isSafetyDevice }
  })
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

function analogueSheet(context: Context, { technology, expectations }: Checkout, device: Device, signal: Signal | undefined): MeterSheet {
  const expected = expectedOf(context, expectations)
  const [low, high] = [signal?.low?.value, signal?.high?.value]
  const at = (state: Expectation['state']) =>
    expectations.find((it) => it.measured === 'analogue-signal' && it.unit === 'mA' && it.state === state)?.value
  if (technology === 'current-loop' && at('range-low') === 4 && at('range-high') === 20 && low !== undefined && high !== undefined)
    return { kind: 'loop', low, high, unit: signal?.unit?.value ?? '', expected }
  const platinum = technology === 'pt100' ? platinumSheet(valuesOfDevice(device, context.machine)) : undefined
  const [lowC, highC] = [low, high].map((end) => (end === undefined ? undefined : temperatureC(end, signal?.unit?.value ?? '')))
  const ends = { ...(lowC === undefined ? {} : { low: lowC }), ...(highC === undefined ? {} : { high: highC }) }
  return platinum ? { ...platinum, ...ends, expected } : { kind: 'plain', expected }
}

function platinumSheet(values: Values): PlatinumSheet | undefined {
  const iceResistanceOhm = values.number('iceResistanceOhm')
  if (!iceResistanceOhm) return undefined
  const [name, element] = [values.choice('platinumClass'), values.choice('element')]
  const [from, to] = [values.number('classFromC')?.value, values.number('classToC')?.value]
  const rangeC = from !== undefined && to !== undefined ? ([from, to] as const) : name && element && classRangesC[element][name]
  return { kind: 'platinum', iceResistanceOhm, expected: [], ...(name && rangeC ? { tolerance: { class: name, rangeC } } : {}) }
}

/** What the kinds of sheets ask for by themselves. */
const askedAnyway: ReadonlySet<Expectation['measured']> = new Set(['signal-bit', 'terminal-voltage', 'supply'])

/** Expectations with a limit that a meter or a gauge can be read against. */
function expectedOf(context: Context, expectations: readonly Expectation[]): Expected[] {
  return expectations.flatMap((it) => {
    const { point, low, high, unit, measured, meter } = it
    const isAsked = meter !== undefined || askedAnyway.has(measured) || it.state === 'failure-low' || it.state === 'failure-high'
    if (isAsked || (low === undefined && high === undefined) || !unitOf(unit)) return []
    const band = { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) }
    return [{ at: point, ...expectationName(context, it), band, unit, basis: basisOfRest(it) }]
  })
}
