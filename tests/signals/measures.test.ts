import { describe, expect, test } from 'vitest'
import type { Result } from '../../src/law/law.ts'
import { flowSwitchBands } from '../../src/signals/flow-switch.ts'
import { echoDistance, echoTime, hydrostaticPressure, liquidHeight, standardGravity } from '../../src/signals/level.ts'
import { pressureSwitchBands } from '../../src/signals/pressure-switch.ts'
import {
  encoderFrequency,
  encoderResolution,
  encoderSpeed,
  flowFrequency,
  flowOfFrequency,
  quadratureRate,
  volumeOfPulses,
} from '../../src/signals/pulses.ts'
import { codingLevel, discrepancy, safetySignal } from '../../src/signals/safety-device.ts'
import { expectValue, valueIn } from './expect-value.ts'

test('MS-01: 2.5 m of water', () => {
  const water = { densityKgPerM3: 1000, gravityMPerS2: standardGravity }
  expectValue(hydrostaticPressure({ ...water, liquidM: 2.5 }), 24.517, 0.01)
  expectValue(liquidHeight({ ...water, pressureKpa: 24.516625 }), 2.5, 1e-9)
  expect(hydrostaticPressure({ liquidM: 2.5 })).toEqual({ notComputed: ['density', 'gravity'] })
})

test('MS-02: pulses of a flow meter', () => {
  expect(valueIn(flowFrequency({ pulsesPerLitre: 450, flowLPerMin: 20 }))).toBe(150)
  expect(valueIn(flowOfFrequency({ pulsesPerLitre: 450, frequencyHz: 150 }))).toBe(20)
  expect(valueIn(volumeOfPulses({ pulses: 900, pulsesPerLitre: 450 }))).toBe(2)
})

test('MS-03, MS-04, MS-05: encoders', () => {
  expect(valueIn(encoderFrequency({ pulsesPerTurn: 1024, speedPerMin: 3000 }))).toBe(51_200)
  expect(valueIn(quadratureRate({ pulsesPerTurn: 1024, speedPerMin: 3000 }))).toBe(204_800)
  expectValue(encoderSpeed({ pulsesPerTurn: 2048, frequencyHz: 17_066.67 }), 500, 0.01)
  expect(valueIn(encoderResolution({ pulsesPerTurn: 500 }))).toBe(0.18)
})

test('MS-06: echo over 1 m at 20 °C', () => {
  expectValue(echoTime({ rangeM: 1, airC: 20 }), 5.824, 0.005)
  expectValue(echoDistance({ echoMs: valueIn(echoTime({ rangeM: 1, airC: 20 })), airC: 20 }), 1, 1e-12)
  expect(echoTime({ rangeM: 1, airC: -200 })).toHaveProperty('impossible')
})

// Source: common practice.
describe('pressure switch', () => {
  const given = { setBar: 6, deadBandBar: 0.5, tolerancePercent: 1, fullScaleBar: 10 }

  test('MS-07: where it trips and resets', () => {
    const { tripLow, tripHigh, resetLow, resetHigh } = pressureSwitchBands(given)
    const bounds: readonly (readonly [Result, number])[] = [
      [tripLow, 5.9],
      [tripHigh, 6.1],
      [resetLow, 5.4],
      [resetHigh, 5.6],
    ]
    for (const [result, expected] of bounds) expectValue(result, expected, 0.01)
  })

  test('a dead band as large as the set point, and one that is not known', () => {
    expect(pressureSwitchBands({ ...given, deadBandBar: 6 }).tripLow).toHaveProperty('impossible')
    expect(pressureSwitchBands({ ...given, setBar: 11 }).tripLow).toHaveProperty('impossible')
    expect(pressureSwitchBands({ ...given, deadBandBar: undefined }).resetLow).toEqual({ notComputed: ['deadBand'] })
  })
})

// Source: common practice, by hand: 12 ± 1 on the rise, 12 − 3 ± 1 on the fall.
describe('flow switch', () => {
  const given = { setLPerMin: 12, deadBandLPerMin: 3, toleranceLPerMin: 1 }
  test('where it trips and resets', () => {
    const { tripLow, tripHigh, resetLow, resetHigh } = flowSwitchBands(given)
    expect([tripLow, tripHigh, resetLow, resetHigh].map(valueIn)).toEqual([11, 13, 8, 10])
  })
  test('one that never resets, and one whose accuracy is not known', () => {
    expect(flowSwitchBands({ ...given, deadBandLPerMin: 12 }).resetLow).toHaveProperty('impossible')
    expect(flowSwitchBands({ ...given, toleranceLPerMin: undefined }).tripHigh).toEqual({ notComputed: ['flowTolerance'] })
  })
})

// Source: ISO 14119, coding levels.
test('SF-05: coding levels', () => {
  expect([1, 9, 10, 1000, 1001].map(codingLevel)).toEqual(['low', 'low', 'medium', 'medium', 'high'])
  expect([0, 1.5, Number.NaN].map(codingLevel)).toEqual([undefined, undefined, undefined])
})

// Source: setting of the device, common practice.
test('SF-06: two channels that do not change together', () => {
  expect(discrepancy(0, 620, 500)).toBe('discrepancy fault')
  expect([discrepancy(1500, 1000, 500), discrepancy(1000, 1501, 500), discrepancy(0, Number.NaN, 500)]).toEqual([
    'in time',
    'discrepancy fault',
    undefined,
  ])
})

test('a safety device is never approved, whatever its signal', () => {
  for (const verdict of ['pass', 'fail', 'no verdict'] as const)
    expect(safetySignal(verdict)).toEqual({ signal: verdict, approval: { refused: 'safety-approval' } })
})
