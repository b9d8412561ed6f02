import { describe, expect, test } from 'vitest'
import { conductorOhmPerKm, wireResistance } from '../../src/signals/cable.ts'
import { type InputType, inputLimits, inputState, sourcingInputState, terminalLimits } from '../../src/signals/digital-input.ts'
import { loadVoltage, outputRatings } from '../../src/signals/digital-output.ts'
import {
  bledVoltage,
  bleederPower,
  largestBleederForLoad,
  largestBleederForOff,
  leakageVerdict,
  leakageVoltage,
  minimumLoadVerdict,
  resistorRatingW,
} from '../../src/signals/input-load.ts'
import { outputLimits, pairingRefusal } from '../../src/signals/sensor-output.ts'
import { type TerminalCircuit, terminalVoltages } from '../../src/signals/terminal-voltage.ts'
import { expectValue, valueIn } from './expect-value.ts'

const types: readonly InputType[] = ['Type 1', 'Type 2', 'Type 3']
const noCable = { supplyWireOhm: 0, signalWireOhm: 0, inputCurrentMa: 3, noLoadCurrentMa: 0 }

function onVoltage(output: 'pnp' | 'npn' | '2-wire' | 'dry contact', card: 'sinking' | 'sourcing', circuit: TerminalCircuit) {
  const voltages = terminalVoltages(output, card, circuit)
  if ('refused' in voltages) throw new Error(voltages.refused)
  return voltages.on
}
const statesAt = (voltageV: number) => types.map((type) => inputState(voltageV, inputLimits[type]))

// Source: IEC 61131-2, 24 V d.c. digital inputs.
describe('states of a sinking input', () => {
  test('DI-01: Type 1', () => {
    const states = [-3.5, 0.4, 5, 5.1, 14.9, 15, 30, 30.5].map((volts) => inputState(volts, inputLimits['Type 1']))
    expect(states).toEqual(['out of range', 'off', 'off', 'no state', 'no state', 'on', 'on', 'out of range'])
  })

  test('DI-02: Type 3', () => {
    expect([5, 8, 10.9, 11].map((volts) => inputState(volts, inputLimits['Type 3']))).toEqual(['off', 'no state', 'no state', 'on'])
  })

  test('DI-03: Type 2 needs 6 mA', () => {
    expect([5.9, 6].map((mA) => inputState(11, inputLimits['Type 2'], mA))).toEqual(['no state', 'on'])
  })

  test('a current that the input must ignore leaves it off', () => {
    expect([0.5, 0.6].map((mA) => inputState(14, inputLimits['Type 1'], mA))).toEqual(['off', 'no state'])
    expect(inputState(Number.NaN, inputLimits['Type 1'])).toBeUndefined()
  })
})

describe('voltage at the terminal while the sensor conducts', () => {
  test('DI-04: 3-wire PNP at 24 V', () => {
    const on = onVoltage('pnp', 'sinking', { ...noCable, supplyV: 24, dropV: 2.5 })
    expectValue(on, 21.5, 0.05)
    expect(statesAt(valueIn(on))).toEqual(['on', 'on', 'on'])
  })

  test('DI-05: 3-wire PNP, worst case, over 100 m of 0.34 mm²', () => {
    const wire = valueIn(wireResistance({ lengthM: 100, resistanceOhmPerKm: conductorOhmPerKm(0.34, 'class 5') }))
    const circuit = { supplyV: 20.4, dropV: 3.5, noLoadCurrentMa: 15, inputCurrentMa: 3, supplyWireOhm: wire, signalWireOhm: wire }
    const on = onVoltage('pnp', 'sinking', circuit)
    expectValue(on, 16.7824, 0.001)
    expect(valueIn(on) - inputLimits['Type 1'].onFromV.value).toBeCloseTo(1.78, 2)
  })

  test('DI-06: 3-wire PNP at a low supply', () => {
    const on = onVoltage('pnp', 'sinking', { ...noCable, supplyV: 18, dropV: outputLimits.pnp.dropV })
    expectValue(on, 14.5, 0.05)
    expect(statesAt(valueIn(on))).toEqual(['no state', 'on', 'on'])
  })

  test('DI-07: 2-wire, worst case', () => {
    const on = onVoltage('2-wire', 'sinking', { ...noCable, supplyV: 20.4, dropV: outputLimits['2-wire'].dropV })
    expectValue(on, 12.4, 0.05)
    expect(statesAt(valueIn(on))).toEqual(['no state', 'on', 'on'])
  })

  test('a dry contact needs no data sheet, a 3-wire switch does', () => {
    expectValue(onVoltage('dry contact', 'sinking', { supplyV: 24, inputCurrentMa: 3, supplyWireOhm: 1, signalWireOhm: 1 }), 23.994, 1e-9)
    const poor = { supplyV: 24, dropV: 2, inputCurrentMa: 3, supplyWireOhm: 1, signalWireOhm: 1, noLoadCurrentMa: undefined }
    expectValue(onVoltage('dry contact', 'sinking', poor), 21.994, 1e-9)
    expect(onVoltage('pnp', 'sinking', { supplyV: 24 })).toEqual({
      notComputed: ['drop', 'noLoadCurrent', 'inputCurrent', 'supplyWire', 'signalWire'],
    })
    expect(onVoltage('pnp', 'sinking', { ...noCable, supplyV: 2, dropV: 3.5 })).toHaveProperty('impossible')
  })

  test('NPN and sourcing: the drop stands at the terminal', () => {
    expectValue(onVoltage('npn', 'sourcing', { ...noCable, supplyV: 24, dropV: 2.5 }), 2.5, 1e-9)
    const off = terminalVoltages('npn', 'sourcing', { supplyV: 24, leakageMa: 0.5, inputResistanceOhm: 4700 })
    expectValue('off' in off ? off.off : { notComputed: [] }, 21.65, 1e-9)
  })
})

// Sources: IEC 60947-5-2, leakage and minimum load; IEC 61131-2.
describe('2-wire sensors', () => {
  test('DI-08: whether an input ignores 1.5 mA', () => {
    expect(types.map((type) => leakageVerdict(1.5, inputLimits[type]))).toEqual(['fail', 'pass', 'pass'])
  })

  test('DI-09: whether an input draws 5 mA', () => {
    const load = outputLimits['2-wire'].minimumLoadMa
    expect(types.map((type) => minimumLoadVerdict(load, inputLimits[type]))).toEqual(['not guaranteed', 'pass', 'not guaranteed'])
    expect([4.9, 5].map((mA) => minimumLoadVerdict(load, inputLimits['Type 1'], mA))).toEqual(['fail', 'pass'])
  })

  test('DI-10, DI-11: 1.5 mA over 4.7 kΩ, without and with a bleeder', () => {
    const given = { leakageMa: 1.5, inputResistanceOhm: 4700, bleederOhm: 4700 }
    expectValue(leakageVoltage(given), 7.05, 0.01)
    expectValue(bledVoltage(given), 3.525, 0.005)
    expect([7.05, 3.525].map((volts) => inputState(volts, inputLimits['Type 1']))).toEqual(['no state', 'off'])
    const off = terminalVoltages('2-wire', 'sinking', { ...given, supplyV: 24 })
    expectValue('off' in off ? off.off : { notComputed: [] }, 7.05, 0.01)
  })

  test('DI-12, DI-13: the bleeder and its heat', () => {
    expectValue(largestBleederForOff({ offLimitV: 5, leakageMa: 1.5, inputCurrentAtOffMa: 0.5 }), 5000, 10)
    expect(largestBleederForOff({ offLimitV: 5, leakageMa: 0.5, inputCurrentAtOffMa: 0.5 })).toHaveProperty('impossible')
    expectValue(largestBleederForLoad({ supplyV: 24, dropV: 8, minimumLoadMa: 5, inputCurrentMa: 3 }), 8000, 1e-6)
    expect(largestBleederForLoad({ supplyV: 24, dropV: 8, minimumLoadMa: 5, inputCurrentMa: 5 })).toHaveProperty('impossible')
    expect(largestBleederForLoad({ supplyV: 8, dropV: 8, minimumLoadMa: 5, inputCurrentMa: 3 })).toHaveProperty('impossible')
    const heat = bleederPower({ supplyV: 30, bleederOhm: 4700 })
    expectValue(heat, 0.1915, 0.001)
    expect([valueIn(heat), 0.0625, 0.07, 26].map(resistorRatingW)).toEqual([0.5, 0.125, 0.25, undefined])
  })
})

test('DI-14: limits at the terminal of a sourcing input at 24 V', () => {
  expect(terminalLimits('sourcing', inputLimits['Type 1'], 24)).toEqual({ onV: 9, offV: 19 })
  expect(terminalLimits('sinking', inputLimits['Type 1'], 24)).toEqual({ onV: 15, offV: 5 })
  expect([9, 9.1, 18.9, 19].map((volts) => sourcingInputState(volts, 24, inputLimits['Type 1']))).toEqual(['on', 'no state', 'no state', 'off'])
})

test('DI-15: NPN on a sinking and PNP on a sourcing input are refused', () => {
  expect(pairingRefusal('npn', 'sinking')).toEqual({ refused: 'npn-on-sinking-input' })
  expect(pairingRefusal('pnp', 'sourcing')).toEqual({ refused: 'pnp-on-sourcing-input' })
  expect(pairingRefusal('namur', 'sinking')).toEqual({ refused: 'not-this-pairing' })
  expect(terminalVoltages('npn', 'sinking', { supplyV: 24 })).toEqual({ refused: 'npn-on-sinking-input' })
  expect([pairingRefusal('pnp', 'sinking'), pairingRefusal('2-wire', 'sourcing')]).toEqual([undefined, undefined])
})

// Sources: IEC 61131-2, d.c. digital outputs; IEC 60228.
test('DO-01: 0.5 A over 30 m of 0.75 mm²', () => {
  const dropV = outputRatings.get(0.5)?.dropV
  const load = { supplyV: 24, dropV, loadCurrentA: 0.5, lengthM: 30, resistanceOhmPerKm: conductorOhmPerKm(0.75, 'class 5') }
  expectValue(loadVoltage(load), 20.22, 0.005)
  expect(loadVoltage({ ...load, resistanceOhmPerKm: conductorOhmPerKm(0.8, 'class 5') })).toEqual({ notComputed: ['resistancePerLength'] })
  expect(outputRatings.get(2)?.highestA.value).toBe(2.4)
})
