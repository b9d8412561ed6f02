import { numberOf } from '../law/law.ts'
import { mostDropPercent } from '../signals/cable-drop.ts'
import { type CardSense, type InputLimits, inputLimits, terminalLimits } from '../signals/digital-input.ts'
import type { SwitchedCircuit } from '../signals/fault/circuit.ts'
import type { TargetState } from '../signals/fault/row.ts'
import { terminalVoltages } from '../signals/terminal-voltage.ts'
import { leakageOf } from './circuit-of.ts'
import { type Expectation, expected, limitsRestOn, nothingUsed, together } from './expectation.ts'
import { statedFrom } from './values-of.ts'
import { type Wired, wireOhm } from './wiring.ts'

/** What a switched signal reads from the device to the address, with and without a target. */
export function switchedExpectations(wired: Wired, circuit: SwitchedCircuit): Expectation[] {
  const bits = (['target', 'none'] as const).map((state) => bitOf(state, circuit, signalName(wired)))
  if (circuit.output === 'namur') return [...loopCurrents(circuit, signalName(wired)), ...bits]
  return [supplyAtDevice(wired, circuit), ...terminalReadings(wired, circuit, circuit.output), ...bits]
}

export const signalName = ({ signal }: Wired): { signal?: string } => (signal?.signal ? { signal: signal.signal.value } : {})

const conductsIn = (state: TargetState, { contact }: SwitchedCircuit) => (state === 'target') === (contact === 'NO')

function bitOf(state: TargetState, circuit: SwitchedCircuit, signal: { signal?: string }): Expectation {
  const bit = conductsIn(state, circuit) ? 1 : 0
  return { measured: 'signal-bit', ...signal, point: 'address', state, unit: '', value: bit, low: bit, high: bit, restsOn: nothingUsed }
}

/** Both the device and the machine must be content with it; the cable may keep its share of the least supply. */
function supplyAtDevice(wired: Wired, { output }: SwitchedCircuit): Expectation {
  const { values, supply, supplyV } = wired
  const meter = output === 'pnp' || output === 'npn' ? ('supply-at-sensor' as const) : ('feed-at-sensor' as const)
  const least = supply?.lowestV && { value: supply.lowestV.value * (1 - mostDropPercent.value / 100), basis: supply.lowestV.from }
  const most = supply?.highestV && statedFrom(supply.highestV)
  const lows = [values.number('lowestSupplyV'), least].filter((it) => it !== undefined)
  const highs = [values.number('highestSupplyV'), most].filter((it) => it !== undefined)
  const missing = [...(supplyV === undefined ? ['supply'] : []), ...(lows.length > 0 ? [] : ['lowestSupplyV'])]
  return {
    measured: 'supply',
    ...signalName(wired),
    point: 'pin',
    meter,
    state: 'always',
    unit: 'V',
    ...(lows.length > 0 ? { low: Math.max(...lows.map(({ value }) => value)) } : {}),
    ...(highs.length > 0 ? { high: Math.min(...highs.map(({ value }) => value)) } : {}),
    ...(supplyV === undefined ? {} : { value: numberOf(supplyV) }),
    ...(missing.length > 0 ? { notComputed: missing } : {}),
    restsOn: limitsRestOn(...lows, ...highs, ...(least ? [mostDropPercent] : []), ...(typeof supplyV === 'object' ? [supplyV] : [])),
  }
}

function terminalReadings(wired: Wired, circuit: SwitchedCircuit, output: Exclude<SwitchedCircuit['output'], 'namur'>): Expectation[] {
  const { values, ofCard, supplyV } = wired
  const sense: CardSense = circuit.card === 'sourcing' ? 'sourcing' : 'sinking'
  const wireOfCable = wireOhm(wired)
  const voltages = terminalVoltages(output, sense, {
    supplyV,
    dropV: circuit.dropV,
    leakageMa: leakageOf(values, output),
    noLoadCurrentMa: values.number('noLoadCurrentMa'),
    inputCurrentMa: ofCard.number('inputCurrentMa'),
    inputResistanceOhm: ofCard.number('inputResistanceOhm'),
    supplyWireOhm: wireOfCable,
    signalWireOhm: wireOfCable,
  })
  const type = ofCard.choice('inputType')
  const limits = type && inputLimits[type]
  return (['target', 'none'] as const).map((state): Expectation => {
    const conducts = conductsIn(state, circuit)
    const meter = 'input-at-card' as const
    const frame = { measured: 'terminal-voltage' as const, ...signalName(wired), point: 'terminal' as const, meter, state, unit: 'V' }
    const result = 'refused' in voltages ? voltages : conducts ? voltages.on : voltages.off
    const found = expected(frame, result, (value) => ({ usual: usualBand(value, conducts, sense, supplyV) }))
    const band = limits && bandAtTerminal(conducts, sense, limits, supplyV)
    if (!band) return { ...found, notComputed: [...new Set([...(found.notComputed ?? []), ...(limits ? ['supply'] : ['inputType'])])] }
    const { used, ...ends } = band
    return { ...found, ...ends, restsOn: together(found.restsOn, limitsRestOn(...used)) }
  })
}

/** What a device in order reads: it drops and leaks at most what its limit says, and often less. */
function usualBand(value: number, conducts: boolean, sense: CardSense, supplyV: Wired['supplyV']): { low: number; high: number } {
  const rail = supplyV === undefined ? 0 : numberOf(supplyV)
  const end = conducts === (sense === 'sinking') ? rail : 0
  return { low: Math.min(value, end), high: Math.max(value, end) }
}

/** What the card takes for the state; a sourcing input is the mirror of a sinking one about the supply. */
function bandAtTerminal(conducts: boolean, sense: CardSense, limits: InputLimits, supplyV: Wired['supplyV']) {
  const used = conducts ? [limits.onFromV, limits.highestV] : [limits.lowestV, limits.offToV]
  if (sense === 'sinking')
    return conducts
      ? { low: limits.onFromV.value, high: limits.highestV.value, used }
      : { low: limits.lowestV.value, high: limits.offToV.value, used }
  if (supplyV === undefined) return undefined
  const { onV, offV } = terminalLimits(sense, limits, numberOf(supplyV))
  const supply = numberOf(supplyV)
  return conducts ? { low: supply - limits.highestV.value, high: onV, used } : { low: offV, high: supply - limits.lowestV.value, used }
}

function loopCurrents({ namur }: SwitchedCircuit, signal: { signal?: string }): Expectation[] {
  if (!namur) return []
  return (['target', 'none'] as const).map((state): Expectation => {
    // An inductive switch lets little current through while it has a target, whatever the amplifier makes of it.
    const [low, high] = state === 'target' ? [namur.possibleBreakMa, namur.highImpedanceMa] : [namur.lowImpedanceMa, namur.possibleShortMa]
    return {
      measured: 'loop-current',
      ...signal,
      point: 'terminal',
      meter: 'loop-current',
      state,
      unit: 'mA',
      low: low.value,
      high: high.value,
      restsOn: limitsRestOn(low, high),
    }
  })
}
