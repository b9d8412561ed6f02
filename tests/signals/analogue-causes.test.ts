import { describe, expect, test } from 'vitest'
import { loopCauses, platinumCauses, thermistorCauses, voltageCauses } from '../../src/signals/fault/analogue-causes.ts'
import type { Cause } from '../../src/signals/fault/cause.ts'
import { coupleCauses, thermocoupleCauses } from '../../src/signals/fault/thermocouple-causes.ts'
import { thermocouples } from '../../src/signals/thermocouple.ts'
import { valueIn } from './expect-value.ts'

const ids = (causes: readonly Cause[]) => causes.map(({ id }) => id)

// Source: NAMUR NE 43 for the bands; causes are common practice.
describe('a 4–20 mA loop', () => {
  test.each([
    [0, ['loop-open']],
    [0.05, ['loop-open']],
    [3.5, ['transmitter-reports-low', 'loop-starved']],
    [3.7, []],
    [3.9, []],
    [12, []],
    [20.4, []],
    [21.5, ['transmitter-reports-high', 'transmitter-shorted', 'loop-fed-twice']],
    [90.4, ['transmitter-shorted', 'loop-fed-twice']],
    [Number.NaN, []],
  ])('%d mA', (currentMa, expected) => expect(ids(loopCauses(currentMa))).toEqual(expected))

  test('a flat top: less than the process says', () => {
    const wanted = { currentMa: 18, toleranceMa: 0.2 }
    expect([17.5, 17.8, 18.4].map((mA) => ids(loopCauses(mA, wanted)))).toEqual([['loop-starved'], [], []])
  })
})

test('platinum that is open, shorted, or in range', () => {
  expect([390.4, 131.2, 18.6, 18.4, 0, 391, 1e6, Number.POSITIVE_INFINITY].map((ohm) => ids(platinumCauses(ohm, 100)))).toEqual([
    [],
    [],
    [],
    ['element-shorted'],
    ['element-shorted'],
    ['element-open'],
    ['element-open'],
    ['element-open'],
  ])
  expect(ids(platinumCauses(185, 1000))).toEqual(['element-shorted'])
  expect(platinumCauses(100, -1)).toEqual([])
})

// Source: ITS-90 reference functions; TC-14 and the figure of the wrong type are held in temperature.test.ts.
describe('a thermocouple', () => {
  const process = { type: 'K', trueC: 100, terminalC: 25, toleranceK: 3 } as const

  test.each([
    ['right', 100, []],
    ['at the temperature of the terminals', 25, ['thermocouple-shorted']],
    ['reversed at the head', -55.8, ['thermocouple-reversed']],
    ['somewhere else', 300, []],
    ['between both', 70, ['thermocouple-cable-wrong']],
  ])('%s', (_, shownC, expected) => expect(ids(thermocoupleCauses({ ...process, shownC }))).toEqual(expected))

  test('a card that is set to another type, either way round', () => {
    expect(ids(thermocoupleCauses({ type: 'J', trueC: 200, terminalC: 25, toleranceK: 3, shownC: 258.5 }))).toEqual(['thermocouple-type-wrong'])
    const voltage = valueIn(thermocouples.K.terminalVoltage({ temperatureC: 200, terminalC: 25 }))
    const shownC = valueIn(thermocouples.J.temperature({ terminalMv: voltage, terminalC: 25 }))
    expect(ids(thermocoupleCauses({ type: 'J', trueC: 200, terminalC: 25, toleranceK: 3, shownC }))[0]).toBe('thermocouple-type-wrong')
  })

  test('where the process is as warm as the terminals nothing can be told', () => {
    expect(thermocoupleCauses({ ...process, trueC: 25, shownC: 26 })).toEqual([])
  })
})

test('a couple that is open, and one that is not', () => {
  expect([0.4, 12, 1000, 1001, 1e6].map((ohm) => ids(coupleCauses(ohm)))).toEqual([[], [], [], ['thermocouple-open'], ['thermocouple-open']])
})

// Source: beta equation, by hand: 10 kΩ at 25 °C, B 3950 K: 401.9 kΩ at −40 °C, 74.5 Ω at 200 °C.
test('a thermistor that is open, shorted, or in range', () => {
  const curve = { referenceOhm: 10_000, referenceC: 25, betaK: 3950 }
  expect([410_000, 390_000, 10_000, 76, 73, 0].map((ohm) => ids(thermistorCauses(ohm, curve)))).toEqual([
    ['element-open'],
    [],
    [],
    [],
    ['element-shorted'],
    ['element-shorted'],
  ])
  expect(thermistorCauses(0, { referenceOhm: 10_000, referenceC: 25 })).toEqual([])
})

// The circuit: a source behind 500 Ω, an input of 100 kΩ; causes are common practice.
describe('a voltage signal', () => {
  const sourceOhm = 500
  const atInput = (volts: number, inputOhm: number) => (volts * inputOhm) / (inputOhm + sourceOhm)
  const range = { lowV: 0, highV: 10 }
  const wanted = { voltageV: 6, toleranceV: 0.1 }

  test.each<[string, number, string | undefined]>([
    ['in order', atInput(6, 1e5), undefined],
    ['a wire that is open: the input pulls to zero', 0, 'voltage-open'],
    ['poles swapped', -atInput(6, 1e5), 'voltage-reversed'],
    ['a card for current, of 250 Ω', atInput(6, 250), 'voltage-loaded'],
    ['a core that touches L+', 23.6, 'voltage-touches-supply'],
    ['no 0 V: the supply current comes back through the input', 11.4, 'voltage-common-open'],
    ['0 V of both half a volt apart', atInput(6, 1e5) + 0.5, 'voltage-offset'],
  ])('%s', (_, volts, expected) => expect(ids(voltageCauses(volts, { ...range, wanted }))[0]).toBe(expected))

  test('without the process, zero is no fault on 0–10 V and one on 2–10 V', () => {
    expect(voltageCauses(0, range)).toEqual([])
    expect(ids(voltageCauses(0, { lowV: 2, highV: 10 }))).toEqual(['voltage-open'])
    expect(voltageCauses(Number.NaN, range)).toEqual([])
  })
})
