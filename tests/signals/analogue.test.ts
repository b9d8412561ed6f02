import { describe, expect, test } from 'vitest'
import { conductorOhmPerKm } from '../../src/signals/cable.ts'
import { largestLoop, loopResistance, resistorVoltage, shortedLoopCurrent, transmitterVoltage } from '../../src/signals/loop-budget.ts'
import { loopLimits, loopState } from '../../src/signals/loop-current.ts'
import { analogueSignals, countsOfSignal, signalOfCounts, signalOfValue, valueOfSignal } from '../../src/signals/scaling.ts'
import { rootSumSquare, shareOfSpan, worstCase } from '../../src/signals/tolerance-stack.ts'
import { judge } from '../../src/signals/verdict.ts'
import { expectValue, valueIn } from './expect-value.ts'

const { '4-20 mA': live, '0-20 mA': dead, '0-10 V': volts } = analogueSignals

// Source: linear scaling, common practice.
describe('signal and value', () => {
  test('AN-01, AN-02, AN-03', () => {
    expectValue(signalOfValue({ ...live.ends, rangeLow: 0, rangeHigh: 10, value: 6 }), 13.6, 0.005)
    expectValue(signalOfValue({ ...live.ends, rangeLow: -50, rangeHigh: 150, value: 25 }), 10, 0.005)
    expectValue(valueOfSignal({ ...live.ends, rangeLow: 0, rangeHigh: 250, signal: 12.8 }), 137.5, 0.01)
  })

  test('AN-17: a 4–20 mA signal on a card set to 0–20 mA', () => {
    const shown = (signal: number) => valueIn(valueOfSignal({ ...dead.ends, rangeLow: 0, rangeHigh: 100, signal }))
    expect([shown(4), shown(12)]).toEqual([20, 60])
  })

  test('a range without a span has no value, and a missing end none either', () => {
    expect(valueOfSignal({ ...live.ends, rangeLow: 5, rangeHigh: 5, signal: 12 })).toHaveProperty('impossible')
    expect(valueOfSignal({ ...live.ends, rangeHigh: 5, signal: 12 })).toEqual({ notComputed: ['rangeLow'] })
  })
})

// Source: NAMUR NE 43.
test('AN-04: states of a loop by its current', () => {
  expect([3.5, 3.6, 3.7, 3.8, 4, 20.5, 20.7, 21, 22].map((mA) => loopState(mA))).toEqual([
    'failure low',
    'failure low',
    'no state',
    'saturated low',
    'measuring',
    'saturated high',
    'no state',
    'failure high',
    'failure high',
  ])
  expect([loopState(20), loopState(Number.NaN)]).toEqual(['measuring', undefined])
  expect(loopState(3.65, { ...loopLimits, failureLowToMa: { value: 3.7, basis: 'data sheet' } })).toBe('failure low')
})

describe('loop budget', () => {
  test('AN-05: 13.6 mA over 250 Ω', () => expectValue(resistorVoltage({ currentMa: 13.6, loadOhm: 250 }), 3.4, 0.001))

  // Source: IEC 60228 for the cable.
  test('AN-06, AN-07, AN-08, AN-09: resistance, supply and what is left', () => {
    const needs = { transmitterV: 12, highestCurrentMa: 22 }
    const most = valueIn(largestLoop({ ...needs, supplyV: 24 }))
    expect(most).toBeCloseTo(545.5, 1)
    const loop = valueIn(loopResistance({ cardOhm: 250, lengthM: 200, resistanceOhmPerKm: conductorOhmPerKm(0.5, 'class 5') }))
    expect(loop).toBeCloseTo(265.6, 6)
    expect(judge(loop, { high: most })).toBe('pass')
    expectValue(transmitterVoltage({ supplyV: 24, currentMa: 22, loadOhm: loop }), 18.157, 0.001)
    const low = valueIn(largestLoop({ ...needs, supplyV: 20.4 }))
    expect(low).toBeCloseTo(381.8, 1)
    expect(judge(loop, { high: low })).toBe('pass')
    expect(largestLoop({ ...needs, supplyV: 11 })).toHaveProperty('impossible')
    expect(transmitterVoltage({ supplyV: 5, currentMa: 22, loadOhm: 265.6 })).toHaveProperty('impossible')
  })

  test('AN-16: a short circuit across the transmitter', () => {
    const current = valueIn(shortedLoopCurrent({ supplyV: 24, loadOhm: 265.6 }))
    expect(current).toBeCloseTo(90.4, 1)
    expect(loopState(current)).toBe('failure high')
  })
})

describe('counts', () => {
  test.each([
    ['AN-10', { ...live.ends, signal: 13.6, countsLow: 0, countsHigh: 27648 }, 16589],
    ['AN-11', { ...dead.ends, signal: 4, countsLow: 0, countsHigh: 4095 }, 819],
    ['AN-11', { ...dead.ends, signal: 12, countsLow: 0, countsHigh: 4095 }, 2457],
    ['AN-11', { ...dead.ends, signal: 20, countsLow: 0, countsHigh: 4095 }, 4095],
    ['AN-12', { ...volts.ends, signal: 3.75, countsLow: 0, countsHigh: 32767 }, 12288],
  ])('%s', (_, given, expected) => {
    expect(Math.round(valueIn(countsOfSignal(given)))).toBe(expected)
    expectValue(signalOfCounts({ ...given, counts: valueIn(countsOfSignal(given)) }), given.signal, 1e-9)
  })
})

// Source: sums, common practice; class of a gauge EN 837-1, from memory.
describe('tolerances', () => {
  test('AN-13, AN-14, AN-15', () => {
    const stack = [0.25, 0.3, 0.1, 0.05]
    expectValue(worstCase(stack), 0.7, 0.0001)
    expectValue(rootSumSquare(stack), 0.4062, 0.0001)
    expectValue(shareOfSpan({ tolerancePercent: 0.7, span: 16 }), 0.112, 0.001)
    expectValue(shareOfSpan({ tolerancePercent: 1.6, span: 16 }), 0.256, 0.001)
  })

  test('one that is missing leaves the sum not computed', () => {
    expect(worstCase([0.25, undefined])).toEqual({ notComputed: ['tolerance'] })
    expect(rootSumSquare([])).toEqual({ notComputed: ['tolerance'] })
    expect(worstCase([0.25, -1])).toHaveProperty('impossible')
  })
})
