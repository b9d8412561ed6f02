import { describe, expect, test } from 'vitest'
import { fieldsOf, indicatorsOf } from '../../src/site/meter/fields-of.ts'
import { expectationOf, judgeField, withMeasured } from '../../src/site/meter/judge-field.ts'
import type {
  EncoderSheet,
  FlowSheet,
  MeterSheet,
  OutputSheet,
  ThermistorSheet,
  ThermocoupleSheet,
  Values,
  VoltageSheet,
} from '../../src/site/meter/meter-sheet.ts'
import { type Lights, outcomeOf } from '../../src/site/meter/outcome-of.ts'

const typeK: ThermocoupleSheet = { kind: 'thermocouple', type: 'K', class: 'class 1', low: 0, high: 200, expected: [] }
const thermistor: ThermistorSheet = {
  kind: 'thermistor',
  referenceOhm: 10_000,
  referenceC: 25,
  betaK: 3950,
  tolerancePercent: 3,
  low: 0,
  high: 150,
  expected: [],
}
const volts: VoltageSheet = { kind: 'voltage', signalLow: 0, signalHigh: 10, low: 0, high: 800, unit: 'mm', toleranceV: 0.05, expected: [] }
const valve: OutputSheet = {
  kind: 'output',
  circuit: { supplyV: 24, dropV: 0.6, ratedA: 0.5, cableOhm: 0.73, ratedV: 24, loadA: 0.1875, hasElectronics: false },
  supply: { band: { low: 22.8, high: 25.2 }, basis: ['data sheet'] },
  limits: { 'load.on': { band: { low: 20.4, high: 26.4 }, basis: ['generic'] }, current: { band: { high: 500 }, basis: ['data sheet'] } },
  basis: ['data sheet'],
  expected: [],
}
const encoder: EncoderSheet = {
  kind: 'encoder',
  circuit: { pulsesPerTurn: 1024, speedPerMin: 90, lowestSupplyV: 10 },
  basis: ['data sheet'],
  expected: [],
}

function verdict(sheet: MeterSheet, id: string, values: Values) {
  const field = fieldsOf(sheet).find((it) => it.id === id)
  const value = values[id]
  if (!field || value === undefined) throw new Error(id)
  return judgeField(field, value, withMeasured(sheet, values), values)
}
const first = (sheet: MeterSheet, values: Values, lights: Lights = {}) => {
  const outcome = outcomeOf(sheet, values, lights)
  if (outcome.kind === 'causes') return outcome.findings.healthy ? 'healthy' : outcome.findings.causes[0]?.id
  return outcome.kind === 'value' ? (outcome.causes[0]?.id ?? outcome.sign) : outcome.kind
}

// Source: NIST ITS-90 tables: type K 4.096 mV at 100 °C, 1.285 mV at 32 °C, 1.000 mV at 25 °C.
describe('a thermocouple in mV', () => {
  test('is the temperature of its tip, with the terminals as they are measured', () => {
    expect(outcomeOf(typeK, { thermovoltage: 4.096 - 1.285, coldJunction: 32 }, {})).toMatchObject({
      value: expect.closeTo(100, 1),
      sign: 'temperature',
    })
    expect(outcomeOf({ ...typeK, terminalC: 32 }, { thermovoltage: 4.096 - 1.0, coldJunction: 25 }, {})).toMatchObject({
      value: expect.closeTo(100, 1),
    })
  })
  test('asks for the temperature of the terminals where nobody knows it', () => {
    expect(first(typeK, { thermovoltage: 2.8 })).toBe('terminalsMissing')
    expect(expectationOf({ id: 'thermovoltage', name: 'thermovoltage', at: 'terminal', unit: 'mV' }, typeK, {})).toBeUndefined()
  })
  test('is held against the reference: class 1 is 1.5 K, and one more for the reading', () => {
    const values = { coldJunction: 25, reference: 100 }
    expect(verdict(typeK, 'thermovoltage', { ...values, thermovoltage: 3.0 })).toBe('pass')
    expect(verdict(typeK, 'thermovoltage', { ...values, thermovoltage: 2.9 })).toBe('fail')
  })
  test.each<[string, Values, string]>([
    ['0 mV', { thermovoltage: 0, coldJunction: 25, reference: 100 }, 'thermocouple-shorted'],
    ['the voltage the other way round', { thermovoltage: -3.096, coldJunction: 25, reference: 100 }, 'thermocouple-reversed'],
    ['far below any temperature', { thermovoltage: -9.2, coldJunction: 25 }, 'thermocouple-reversed'],
    ['the voltage of type J', { thermovoltage: 5.269 - 1.277, coldJunction: 25, reference: 100 }, 'thermocouple-of-other-type'],
    ['a card for type J, with a couple in order', { thermovoltage: 3.096, coldJunction: 25, reference: 100, shown: 82 }, 'thermocouple-type-wrong'],
    ['a screen of the cabinet, and no voltage read', { coldJunction: 25, reference: 100, shown: 25.4 }, 'thermocouple-shorted'],
    ['a screen alone', { coldJunction: 25, shown: 60 }, 'screen'],
    ['less than it should be', { thermovoltage: 2.2, coldJunction: 25, reference: 100 }, 'thermocouple-cable-wrong'],
    ['a couple of 1 MΩ', { couple: 1e6 }, 'thermocouple-open'],
    ['all as it should be', { thermovoltage: 3.096, coldJunction: 25, reference: 100, couple: 12 }, 'temperature'],
  ])('%s', (_, values, expected) => expect(first(typeK, values)).toBe(expected))
})

// Source: beta equation by hand, 10 kΩ, B 3950 K: 1492 Ω at 75 °C.
describe('a thermistor in Ω', () => {
  test('is a temperature, with its difference from the reference', () => {
    expect(outcomeOf(thermistor, { element: 1492, reference: 74 }, {})).toMatchObject({
      value: expect.closeTo(75, 1),
      difference: expect.closeTo(1, 1),
    })
  })
  test('is held against the reference, within its tolerance', () => {
    expect([
      verdict(thermistor, 'element', { element: 1500, reference: 75 }),
      verdict(thermistor, 'element', { element: 1600, reference: 75 }),
    ]).toEqual(['pass', 'fail'])
  })
  test('open or shorted stands for no temperature', () => {
    expect([first(thermistor, { element: 1e7 }), first(thermistor, { element: 2 })]).toEqual(['element-open', 'element-shorted'])
  })
})

describe('0 to 10 V', () => {
  test('are a value of the range', () => expect(outcomeOf(volts, { voltage: 4 }, {})).toMatchObject({ value: 320, unit: 'mm', sign: 'inRange' }))
  test('zero is no fault before the real value is known', () => {
    expect([first(volts, { voltage: 0.05 }), first(volts, { voltage: 0.05, referenceValue: 300 })]).toEqual(['atZero', 'voltage-open'])
  })
  test('more than a transmitter gives', () =>
    expect([first(volts, { voltage: 11 }), first(volts, { voltage: 23.5 })]).toEqual(['voltage-common-open', 'voltage-touches-supply']))
  test('are held against the reference', () => {
    expect([
      verdict(volts, 'voltage', { voltage: 4.02, referenceValue: 320 }),
      verdict(volts, 'voltage', { voltage: 4.2, referenceValue: 320 }),
    ]).toEqual(['pass', 'fail'])
    expect(outcomeOf(volts, { voltage: 4.2, referenceValue: 320 }, {})).toMatchObject({ difference: expect.closeTo(16, 9) })
  })
})

describe('a coil', () => {
  test('has a light of the card and a tag, and every reading with a limit', () => {
    expect(indicatorsOf(valve)).toEqual(['card-led', 'tag'])
    for (const field of fieldsOf(valve)) expect(expectationOf(field, valve, {}), field.id).toBeDefined()
  })
  test('of which nothing moves at a good voltage is open, or its wire is', () => {
    expect(first(valve, { 'terminal.on': 23.6, 'load.on': 23.5, current: 0 }, { tag: 'with', 'card-led': 'with' })).toBe('load-open')
    expect(first(valve, { 'terminal.on': 23.6, 'load.on': 0 })).toBe('load-wire-open')
  })
  test('that is healthy, at the supply that was measured', () => {
    const values = { supply: 22.9, 'terminal.on': 22.4, 'load.on': 22.2, current: 172, cold: 129, 'terminal.off': 0 }
    expect(first(valve, values, { tag: 'with', 'card-led': 'with' })).toBe('healthy')
    expect(verdict(valve, 'terminal.on', values)).toBe('pass')
    expect(verdict(valve, 'load.on', { 'load.on': 20.1 })).toBe('fail')
    expect(verdict(valve, 'current', { current: 0 })).toBe('fail')
  })
  test('whose output is dead with its light off', () => {
    expect(first(valve, { 'terminal.on': 0 }, { tag: 'with', 'card-led': 'never' })).toBe('output-dark')
    const outcome = outcomeOf(valve, { 'terminal.on': 0 }, { tag: 'with', 'card-led': 'never' })
    expect(outcome.kind === 'causes' && outcome.findings.causes.map(({ id }) => id)).toContain('card-without-load-supply')
  })
  test('that is not asked for, and one that never goes off', () => {
    expect([first(valve, { 'terminal.on': 0 }, { tag: 'never' }), first(valve, { 'terminal.off': 23.5, 'load.off': 23.4 })]).toEqual([
      'command-missing',
      'output-stays-on',
    ])
  })
})

describe('an encoder', () => {
  test('is held against the speed that was measured', () => {
    const values = { speed: 45, channelA: 768, channelB: 768, counts: 4096 }
    expect(verdict(encoder, 'channelA', values)).toBe('pass')
    expect([first(encoder, values), first(encoder, { ...values, counts: -4096 }), first(encoder, { ...values, counts: 2048 })]).toEqual([
      'healthy',
      'channels-swapped',
      'edges-set-wrong',
    ])
    expect(first(encoder, { channelA: 768, channelB: 768, counts: 4096 })).toBe('turns-at-other-speed')
  })
  test('nothing entered', () => expect(first(encoder, {})).toBe('nothing'))
})

describe('a flow meter', () => {
  const flow: FlowSheet = {
    kind: 'flow',
    circuit: { pulsesPerLitre: 10, flowLPerMin: 30, lowestSupplyV: 18 },
    basis: ['data sheet'],
    expected: [],
  }

  test('is held against the flow that was measured', () => {
    const values = { flow: 60, atCard: 10, shown: 60 }
    expect([verdict(flow, 'atCard', values), verdict(flow, 'atCard', { atCard: 10 }), verdict(flow, 'flow', values)]).toEqual([
      'pass',
      'fail',
      'no verdict',
    ])
    expect([first(flow, values), first(flow, { ...values, shown: 0 }), first(flow, { ...values, shown: 30 })]).toEqual([
      'healthy',
      'flow-not-counted',
      'flow-factor-wrong',
    ])
  })

  test.each([
    [{ flow: 0, atCard: 0 }, 'flow-none'],
    [{ supply: 9, atCard: 0 }, 'flow-without-supply'],
    [{ atMeter: 5, atCard: 0 }, 'flow-wire-open'],
    [{ flow: 30, supply: 24, atMeter: 0 }, 'flow-sensor-dead'],
    [{ atMeter: 5, atCard: 9, stopped: 3 }, 'flow-pulses-added'],
    [{ atCard: 2, shown: 12 }, 'flow-otherwise'],
    [{ flow: 30, atCard: 2, shown: 12 }, 'flow-of-other-meter'],
    [{}, 'nothing'],
  ])('%o: %s', (values, cause) => expect(first(flow, values)).toBe(cause))
})

describe('a motor', () => {
  const motor: MeterSheet = { kind: 'motor', ratedA: 3.5, expected: [] }
  test('has each winding held against the other two, and each current against the plate', () => {
    const windings = { windingUv: 4.1, windingVw: 4.1, windingWu: 5 }
    expect([verdict(motor, 'windingWu', windings), verdict(motor, 'windingUv', { ...windings, windingWu: 4.12 })]).toEqual(['fail', 'pass'])
    expect([verdict(motor, 'currentU', { currentU: 3.6 }), verdict(motor, 'currentU', { currentU: 3.4 })]).toEqual(['fail', 'pass'])
    expect(verdict(motor, 'windingUv', { windingUv: 4 })).toBe('no verdict')
  })
  test('says how far the three differ', () => {
    // By hand: 0.9 of 4.4 is 20.5 %.
    expect(outcomeOf(motor, { windingUv: 4.1, windingVw: 4.1, windingWu: 5 }, {})).toMatchObject({
      value: expect.closeTo(20.45, 1),
      unit: '%',
      sign: 'unbalanced',
    })
    expect(first(motor, { windingUv: 4.1, windingVw: 4.1, windingWu: 4.15, currentU: 3, currentV: 3, currentW: 0 })).toBe('phase-missing')
    expect(first(motor, { windingUv: 4.1, windingVw: 4.1, windingWu: 4.15 })).toBe('balanced')
    expect(first(motor, { windingUv: 4.1 })).toBe('nothing')
  })
})

// By hand: 3 V across 250 Ω are 12 mA.
test('the current of a loop can be read across the input of its card', () => {
  const loop: MeterSheet = { kind: 'loop', low: 0, high: 6, unit: 'bar', cardOhm: 250, expected: [] }
  expect(outcomeOf(loop, { acrossCard: 3 }, {})).toMatchObject({ value: 3, unit: 'bar', sign: 'measuring' })
  expect([verdict(loop, 'acrossCard', { acrossCard: 3 }), verdict(loop, 'acrossCard', { acrossCard: 0.8 })]).toEqual(['pass', 'fail'])
  expect(first(loop, { acrossCard: 0 })).toBe('loop-open')
})
