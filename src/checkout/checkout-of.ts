import type { CheckoutSupply } from '../model/checkout-data.ts'
import type { Graph } from '../model/graph.ts'
import type { Device, Machine, Signal } from '../model/machine.ts'
import { type CheckoutTechnology, checkoutOfTechnology } from '../model/schema/checkout-values.ts'
import type { OutputCircuit } from '../signals/fault/output-rows.ts'
import type { SeenStates } from '../signals/fault/seen-state.ts'
import type { RefusalId } from '../signals/refusals.ts'
import type { ThermocoupleType } from '../signals/thermocouple-coefficients.ts'
import { analogueExpectations } from './analogue.ts'
import { type CircuitOf, circuitOf } from './circuit-of.ts'
import { type Expectation, isComputed, limitsRestOn, stated } from './expectation.ts'
import { lightExpectations } from './light.ts'
import { coilExpectations, heaterExpectations, lampExpectations, motorExpectations } from './loads.ts'
import { outputCircuitOf } from './output-circuit.ts'
import { mountingExpectations, proximityExpectations } from './proximity.ts'
import { encoderExpectations, flowExpectations } from './pulses.ts'
import { seenStates } from './seen-states.ts'
import { flowSwitchExpectations, levelSwitchExpectations, pressureExpectations, temperatureSwitchExpectations } from './switch-points.ts'
import { switchedExpectations } from './switched.ts'
import { platinumExpectations, thermistorExpectations, thermocoupleExpectations } from './temperature.ts'
import { type Wired, wire } from './wiring.ts'

export interface Checkout extends CircuitOf {
  technology: CheckoutTechnology
  supply: CheckoutSupply | undefined
  /** One for each switched input, in the order of the I/O list; `circuit` above is that of the first. */
  circuits: readonly (CircuitOf & { signal: Signal; seen?: SeenStates })[]
  /** Of a thermocouple: its type. */
  thermocouple?: ThermocoupleType
  /** Loads on plain outputs, as their fault rows take them. */
  outputs: readonly { signal: Signal; circuit: OutputCircuit }[]
  /** First what holds for the device itself, then signal by signal. */
  expectations: readonly Expectation[]
  /** Of a safety device: a reading never approves it. */
  approval?: RefusalId
}

const guards: ReadonlySet<CheckoutTechnology> = new Set(['safety-interlock', 'emergency-stop', 'light-curtain'])

/**
 * What a device should read; undefined for a technology with nothing to measure. `measuredV`: the supply that was
 * measured, in V, in place of the nominal one.
 */
export function checkoutOf(device: Device, machine: Machine, graph: Graph, measuredV?: number): Checkout | undefined {
  const technology = technologyOf(device)
  if (!technology) return undefined
  const signals = graph.signalsOf(device.tag.value)
  const wired = signals.map((signal) => wire(device, signal, machine, measuredV))
  const first = wired[0] ?? wire(device, undefined, machine, measuredV)
  const circuits = wired.flatMap((it) => {
    const circuit = circuitOf(it)
    const seen = circuit?.circuit && seenStates(technology, it, circuit.circuit)
    return circuit && it.signal ? [{ ...circuit, signal: it.signal, wired: it, ...(seen ? { seen } : {}) }] : []
  })
  const [main] = circuits
  const couple = first.values.choice('thermocouple')
  return {
    technology,
    ...(main?.circuit ? { circuit: main.circuit } : {}),
    ...(main?.notComputed ? { notComputed: main.notComputed } : {}),
    ...(main?.refused ? { refused: main.refused } : {}),
    supply: first.supply,
    ...(technology === 'thermocouple' && couple ? { thermocouple: couple } : {}),
    circuits: circuits.map(({ wired: _, ...rest }) => rest),
    outputs: wired.flatMap((it) => {
      const circuit = outputCircuitOf(it, technology)
      return circuit && it.signal ? [{ signal: it.signal, circuit }] : []
    }),
    expectations: [
      ...ofDevice(technology, first),
      ...circuits.flatMap(({ circuit, wired, seen }) => (circuit ? switchedExpectations(wired, circuit).map((it) => withSeen(it, seen)) : [])),
      ...wired.flatMap((it) => ofOutput(technology, it)),
    ],
    ...(guards.has(technology) ? { approval: 'safety-approval' as const } : {}),
  }
}

const withSeen = (it: Expectation, seen: SeenStates | undefined): Expectation =>
  seen && (it.state === 'target' || it.state === 'none') ? { ...it, seen: seen[it.state] } : it

export function technologyOf({ technology }: Device): CheckoutTechnology | undefined {
  const name = technology?.value
  return name !== undefined && Object.hasOwn(checkoutOfTechnology, name) ? (name as CheckoutTechnology) : undefined
}

function ofDevice(technology: CheckoutTechnology, wired: Wired): Expectation[] {
  switch (technology) {
    case 'inductive':
    case 'capacitive':
    case 'namur':
      return [...proximityExpectations(wired), ...mountingExpectations(wired)]
    case 'photoelectric-through-beam':
      return lightExpectations(wired, 'through-beam')
    case 'photoelectric-retro-reflective':
      return lightExpectations(wired, 'retro-reflective')
    case 'photoelectric-diffuse':
      return lightExpectations(wired, 'diffuse')
    case 'pressure-switch':
      return pressureExpectations(wired)
    case 'temperature-switch':
      return temperatureSwitchExpectations(wired)
    case 'flow-switch':
      return flowSwitchExpectations(wired)
    case 'float-switch':
      return levelSwitchExpectations(wired)
    case 'current-loop':
    case 'voltage-signal':
      return analogueExpectations(wired)
    case 'pt100':
      return platinumExpectations(wired)
    case 'thermocouple':
      return thermocoupleExpectations(wired)
    case 'thermistor':
      return thermistorExpectations(wired)
    case 'pulse-flow':
      return flowExpectations(wired)
    case 'encoder':
      return encoderExpectations(wired)
    case 'heater':
      return heaterExpectations(wired)
    case 'motor':
      return motorExpectations(wired)
    case 'power-supply':
      return supplyExpectations(wired)
    default:
      return []
  }
}

/** What the controller switches: once for each output. */
function ofOutput(technology: CheckoutTechnology, wired: Wired): Expectation[] {
  if (!/^S?DO$/.test(wired.signal?.type.value ?? '')) return []
  if (technology === 'solenoid-valve' || technology === 'safety-interlock') return coilExpectations(wired, 'valve')
  if (technology === 'contactor') return coilExpectations(wired, 'contactor must close')
  return technology === 'lamp' || technology === 'push-button' ? lampExpectations(wired) : []
}

function supplyExpectations({ supply }: Wired): Expectation[] {
  const frame = { measured: 'supply', point: 'device', state: 'always', unit: 'V' } as const
  if (!supply) return [{ ...stated(frame), notComputed: ['supply'] }]
  const { nominalV, lowestV, highestV } = supply
  const used = [nominalV, lowestV, highestV].flatMap((it) => (it ? [{ value: it.value, basis: it.from }] : []))
  const ends = { ...(lowestV ? { low: lowestV.value } : {}), ...(highestV ? { high: highestV.value } : {}) }
  return [{ ...stated({ ...frame, value: nominalV.value }), ...ends, restsOn: limitsRestOn(...used) }]
}

/** Whether a reading of the device can be judged, or a value is shown for it. A bit of the controller alone is no limit. */
export const hasLimits = ({ expectations }: Checkout): boolean => expectations.some((it) => it.measured !== 'signal-bit' && isComputed(it))

/** For the shares of a machine: whether limits are computed for a device; undefined for one with nothing to measure, and without data. */
export const limitsIn =
  (machine: Machine, graph: Graph) =>
  (device: Device): boolean | undefined => {
    const checkout = machine.checkout && checkoutOf(device, machine, graph)
    return checkout && hasLimits(checkout)
  }
