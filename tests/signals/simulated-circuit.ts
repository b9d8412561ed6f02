import { type InputLimits, inputState } from '../../src/signals/digital-input.ts'
import type { SwitchedCircuit } from '../../src/signals/fault/circuit.ts'
import type { Observation } from '../../src/signals/fault/diagnose.ts'
import { type FaultId, type Light, type Point, type TargetState, targetStates } from '../../src/signals/fault/row.ts'

/**
 * A circuit as a net of resistors, solved node by node: it knows nothing of the fault table. A fault is what a
 * technician could do to it: cut a wire, touch another, swap two.
 */
export type Net = readonly (readonly [from: string, to: string, ohm: number])[]

const cut = 1e9
const meterOhm = 1e7

/** What a circuit is made of. `sensorOhm` draws the current of the sensor itself, `switchOhm` makes its drop. */
export interface Parts {
  supplyV: number
  wireOhm: number
  inputOhm: number
  sensorOhm: number
  switchOhm: number
}
export const usualParts: Parts = { supplyV: 24, wireOhm: 1, inputOhm: 4700, sensorOhm: 2400, switchOhm: 300 }

/** Voltages of all nodes, with L+ and 0 V held. */
export function solve(net: Net, supplyV: number): Map<string, number> {
  const held = new Map([
    ['L+', supplyV],
    ['0V', 0],
  ])
  const free = [...new Set(net.flatMap(([a, b]) => [a, b] as const))].filter((node) => !held.has(node))
  const rows = free.map((node) => {
    const row = new Array<number>(free.length + 1).fill(0)
    for (const [a, b, ohm] of net) {
      if (a !== node && b !== node) continue
      const other = a === node ? b : a
      row[free.indexOf(node)] = (row[free.indexOf(node)] ?? 0) + 1 / ohm
      const known = held.get(other)
      const column = known === undefined ? free.indexOf(other) : free.length
      row[column] = (row[column] ?? 0) + (known === undefined ? -1 : known) / ohm
    }
    return row
  })
  for (const [pivot, row] of rows.entries()) {
    for (const other of rows) {
      if (other === row) continue
      const factor = (other[pivot] ?? 0) / (row[pivot] ?? 1)
      for (let column = pivot; column <= free.length; column++) other[column] = (other[column] ?? 0) - factor * (row[column] ?? 0)
    }
  }
  return new Map([...held, ...rows.map((row, index) => [free[index] ?? '', (row[free.length] ?? 0) / (row[index] ?? 1)] as const)])
}

/** All readings and lights of a circuit with one fault, in both states of the target. */
export function simulate(circuit: SwitchedCircuit, fault: FaultId, limits: InputLimits, parts: Parts = usualParts): Observation[] {
  const threeWire = circuit.output === 'pnp' || circuit.output === 'npn'
  return targetStates.flatMap((state) => (threeWire ? threeWireState : twoWireState)(circuit, fault, state, limits, parts))
}

function conducts({ contact }: SwitchedCircuit, fault: FaultId, state: TargetState): boolean {
  if (fault === 'contact-stays-open' || fault === 'contact-stays-closed') return fault === 'contact-stays-closed'
  const sensed = fault === 'always-senses' || (fault !== 'never-senses' && state === 'target')
  return (sensed === (contact === 'NO')) !== (fault === 'contact-inverted')
}

const read = (nodes: Map<string, number>, plus: string, minus: string) => (nodes.get(plus) ?? Number.NaN) - (nodes.get(minus) ?? Number.NaN)

function threeWireState(circuit: SwitchedCircuit, fault: FaultId, state: TargetState, limits: InputLimits, parts: Parts): Observation[] {
  const { supplyV, wireOhm: wire, inputOhm, sensorOhm, switchOhm } = parts
  const sinking = circuit.card === 'sinking'
  const pnp = (circuit.output === 'pnp') !== (fault === 'device-is-npn' || fault === 'device-is-pnp')
  const on = conducts(circuit, fault, state)
  const reversed = fault === 'supply-reversed'
  // A low supply is a poor line in the wire that carries the signal too.
  const poor = fault === 'low-supply' ? 0.4 * sensorOhm : wire
  const brown = fault === 'l-plus-open' ? cut : pnp ? poor : wire
  const blue = fault === 'l-minus-open' ? cut : pnp ? wire : poor
  const shortedOutput = fault === (pnp ? 'signal-shorted-to-l-minus' : 'signal-shorted-to-l-plus')
  const outputOhm = on && !reversed ? (shortedOutput ? 1e5 : switchOhm) : 1e6
  const common = fault === 'card-common-open' ? cut : wire
  const strayed = fault === 'cores-swapped'
  const base: Net = [
    [reversed ? '0V' : 'L+', 'BN', brown],
    [reversed ? 'L+' : '0V', 'BU', blue],
    ['BN', 'BU', sensorOhm],
    [pnp ? 'BN' : 'BU', 'BK', outputOhm],
    ['BK', strayed ? 'OTHER' : 'IN', fault === 'signal-open' ? cut : wire],
    ['IN', 'COM', inputOhm],
    ['OTHER', 'COM', inputOhm],
    [sinking ? '0V' : 'L+', 'COM', common],
    ...(fault === 'signal-shorted-to-l-plus' ? ([['L+', 'BK', 0.1]] as const) : []),
    ...(fault === 'signal-shorted-to-l-minus' ? ([['0V', 'BK', 0.1]] as const) : []),
    ...(fault === 'leakage' ? ([[sinking ? 'L+' : '0V', 'IN', 2 * inputOhm]] as const) : []),
  ]
  // The diode in the output carries the sensor's own current where a pole is missing.
  const before = solve(base, supplyV)
  const diode: Net = fault === 'l-minus-open' && pnp && read(before, 'BU', 'BK') > 0 ? [['BU', 'BK', 100]] : []
  const mirror: Net = fault === 'l-plus-open' && !pnp && read(before, 'BK', 'BN') > 0 ? [['BK', 'BN', 100]] : []
  const net = [...base, ...diode, ...mirror]
  const meter = (point: Point, plus: string, minus: string): Observation => {
    const loaded = solve([...net, [plus, minus, meterOhm]], supplyV)
    return { state, point, value: read(loaded, plus, minus) }
  }
  const nodes = solve(net, supplyV)
  const alive = read(nodes, 'BN', 'BU') > 9
  const lights = cardLights(nodes, circuit, fault, state, limits)
  const led: Light = alive ? (on ? (shortedOutput ? 'unsteady' : 'lit') : 'dark') : 'dark'
  const other = sinking ? read(nodes, 'OTHER', 'COM') : read(nodes, 'COM', 'OTHER')
  return [
    meter('supply-at-sensor', 'BN', 'BU'),
    meter('brown-to-common', 'BN', '0V'),
    meter('output-at-sensor', 'BK', 'BU'),
    meter('input-at-card', 'IN', sinking ? 'COM' : '0V'),
    meter('input-to-cabinet', 'IN', '0V'),
    { state, indicator: 'output-led', shows: led },
    ...lights,
    { state, indicator: 'other-led', shows: strayed && other > limits.onFromV.value ? 'lit' : 'dark' },
  ]
}

function twoWireState(circuit: SwitchedCircuit, fault: FaultId, state: TargetState, limits: InputLimits, parts: Parts): Observation[] {
  const { supplyV, wireOhm: wire, inputOhm, switchOhm } = parts
  const sinking = circuit.card === 'sinking'
  const [live, back] = sinking ? (['L+', '0V'] as const) : (['0V', 'L+'] as const)
  const on = conducts(circuit, fault, state)
  const sensor = circuit.output === '2-wire'
  // Half way between the limits of the input.
  const tooHigh = inputOhm * ((2 * supplyV) / (limits.offToV.value + limits.onFromV.value) - 1)
  const closed = sensor ? (fault === 'drop-too-high' ? tooHigh : 0.1 * inputOhm + 1.5 * switchOhm) : fault === 'poor-contact' ? 0.3 * inputOhm : 0.05
  const strayed = fault === 'cores-swapped'
  const toLive = fault === (sinking ? 'signal-shorted-to-l-plus' : 'signal-shorted-to-l-minus')
  const toBack = fault === (sinking ? 'signal-shorted-to-l-minus' : 'signal-shorted-to-l-plus')
  const weak = fault === 'load-too-small'
  // A contact that closes on a short circuit blows the fuse.
  const open = fault === 'l-plus-open' || fault === 'l-minus-open' || (toBack && !sensor)
  const feed = open ? cut : fault === 'low-supply' ? 4000 : wire
  const net: Net = [
    [live, 'FEED', feed],
    ['FEED', 'OUT', on ? (weak ? 20_000 : closed) : sensor ? 1e5 : cut],
    ['OUT', strayed ? 'OTHER' : 'IN', fault === 'signal-open' ? cut : wire],
    ['IN', 'COM', inputOhm],
    ['OTHER', 'COM', inputOhm],
    [back, 'COM', fault === 'card-common-open' ? cut : wire],
    // Others on the same poor line load it.
    ...(fault === 'low-supply' ? ([['FEED', back, 8000]] as const) : []),
    ...(toLive ? ([['OUT', live, 0.1]] as const) : []),
    ...(toBack ? ([['OUT', back, 0.1]] as const) : []),
    ...(fault === 'leakage' ? ([[live, 'IN', 2 * inputOhm]] as const) : []),
  ]
  const meter = (point: Point, plus: string, minus: string): Observation => {
    const loaded = solve([...net, [plus, minus, meterOhm]], supplyV)
    return { state, point, value: read(loaded, plus, minus) }
  }
  const nodes = solve(net, supplyV)
  const carries = Math.abs(read(nodes, 'FEED', 'OUT')) > 1 && on
  return [
    sinking ? meter('feed-at-sensor', 'FEED', '0V') : meter('feed-at-sensor', 'L+', 'FEED'),
    sinking ? meter('across-sensor', 'FEED', 'OUT') : meter('across-sensor', 'OUT', 'FEED'),
    meter('input-at-card', 'IN', sinking ? 'COM' : '0V'),
    ...(sensor ? [{ state, indicator: 'output-led', shows: carries ? (weak ? 'unsteady' : 'lit') : 'dark' } as const] : []),
    ...cardLights(nodes, circuit, fault, state, limits),
    { state, indicator: 'other-led', shows: strayed && on ? 'lit' : 'dark' },
  ]
}

function cardLights(nodes: Map<string, number>, circuit: SwitchedCircuit, fault: FaultId, state: TargetState, limits: InputLimits): Observation[] {
  const voltage = circuit.card === 'sinking' ? read(nodes, 'IN', 'COM') : read(nodes, 'COM', 'IN')
  const light = { on: 'lit', off: 'dark', 'no state': 'unsteady', 'out of range': 'unsteady' } as const
  const seen: Light = fault === 'card-channel-failed' ? 'dark' : light[inputState(voltage, limits) ?? 'off']
  const tag: Light = fault === 'tag-stays-off' ? 'dark' : fault === 'tag-stays-on' ? 'lit' : seen
  return [
    { state, indicator: 'card-led', shows: seen },
    { state, indicator: 'tag', shows: tag },
  ]
}
