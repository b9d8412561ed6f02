import { describe, expect, test } from 'vitest'
import { type Cause, loopCauses, platinumCauses, thermocoupleCauses } from '../../src/signals/fault/analogue-causes.ts'
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
  ])('%s', (_, shownC, expected) => expect(ids(thermocoupleCauses({ ...process, shownC }))).toEqual(expected))

  test('a card that is set to another type, either way round', () => {
    expect(ids(thermocoupleCauses({ type: 'J', trueC: 200, terminalC: 25, toleranceK: 3, shownC: 258.5 }))).toEqual(['thermocouple-type-wrong'])
    const voltage = valueIn(thermocouples.K.terminalVoltage({ temperatureC: 200, terminalC: 25 }))
    const shownC = valueIn(thermocouples.J.temperature({ terminalMv: voltage, terminalC: 25 }))
    expect(ids(thermocoupleCauses({ type: 'J', trueC: 200, terminalC: 25, toleranceK: 3, shownC }))).toEqual(['thermocouple-type-wrong'])
  })

  test('where the process is as warm as the terminals nothing can be told', () => {
    expect(thermocoupleCauses({ ...process, trueC: 25, shownC: 26 })).toEqual([])
  })
})
