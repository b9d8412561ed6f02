import { describe, expect, test } from 'vitest'
import {
  conductorOhmPerKm,
  conductorSizesMm2,
  copperPerK,
  copperResistivity,
  gaugeArea,
  solidResistance,
  warmResistance,
  wireResistance,
} from '../../src/signals/cable.ts'
import { cableDrop, cableDropPercent, mostDropPercent, smallestSize } from '../../src/signals/cable-drop.ts'
import { coilCurrent, coilTolerance, coilVerdict, coldCoilResistance, warmCoilResistance } from '../../src/signals/coil.ts'
import { bondingResistance, insulationVerdict, leastInsulation } from '../../src/signals/electrical-tests.ts'
import { cylinderForce, mostImbalance, phaseImbalance, slip, synchronousSpeed } from '../../src/signals/motor.ts'
import { loadCurrent, loadResistance } from '../../src/signals/resistive-load.ts'
import { judge } from '../../src/signals/verdict.ts'
import { voltageWindow, voltageWindows } from '../../src/signals/voltage-window.ts'
import { expectValue, valueIn } from './expect-value.ts'

test('a heating element of 4 kW on 400 V has 40 Ω and takes 10 A', () => {
  expectValue(loadResistance({ ratedV: 400, ratedW: 4000 }), 40, 1e-9)
  expectValue(loadCurrent({ ratedV: 400, ratedW: 4000 }), 10, 1e-9)
})

describe('coils', () => {
  const wireOnly = { fedWith: 'd.c.', hasElectronics: false } as const
  const valve = { coilV: 24, coilW: 4.5 }

  test('OU-01, OU-02: 24 V and 4.5 W, cold and at +60 K', () => {
    const cold = coldCoilResistance(wireOnly, valve)
    if ('refused' in cold) throw new Error(cold.refused)
    expectValue(cold, 128, 0.5)
    expectValue(coilCurrent(valve), 187.5, 0.5)
    expectValue(warmCoilResistance({ coldOhm: 128, copperPerK, riseK: 60 }), 158.2, 0.5)
    expect([115, 141, 142].map((ohm) => coilVerdict(ohm, 128, coilTolerance))).toEqual(['fail', 'fail', 'fail'])
    expect([115.2, 128, 140.8].map((ohm) => coilVerdict(ohm, 128, coilTolerance))).toEqual(['pass', 'pass', 'pass'])
  })

  test('what is no plain d.c. coil is refused, and what is not known not computed', () => {
    expect(coldCoilResistance({ ...wireOnly, fedWith: 'a.c.' }, valve)).toEqual({ refused: 'alternating-current-coil' })
    expect(coldCoilResistance({ ...wireOnly, hasElectronics: true }, valve)).toEqual({ refused: 'coil-with-electronics' })
    expect(coldCoilResistance({}, valve)).toEqual({ notComputed: ['coilFeed', 'coilElectronics'] })
  })
})

// Sources: IEC 61131-2 for the controller; IEC 60947-4-1 from memory; valve: common practice.
test.each([
  ['OU-03', 'valve', 20.4, 26.4],
  ['OU-04', 'controller supply', 20.4, 28.8],
  ['OU-05', 'contactor must close', 20.4, 26.4],
  ['OU-05', 'd.c. contactor has released', 2.4, 18],
  ['a.c.', 'a.c. contactor has released', 4.8, 18],
] as const)('%s: %s at 24 V', (_, name, low, high) => {
  const window = voltageWindow(voltageWindows[name], 24)
  expectValue(window.low, low, 1e-9)
  expectValue(window.high, high, 1e-9)
  expect(voltageWindow(voltageWindows[name], undefined).low).toEqual({ notComputed: ['ratedVoltage'] })
})

// Source: IEC 60228; the limit of 5 % IEC 60204-1, 12.5, from memory.
describe('cables', () => {
  const run = { loadCurrentA: 2, lengthM: 40 }

  test('OU-06: 2 A over 40 m of 1.5 mm²', () => {
    const given = { ...run, resistanceOhmPerKm: conductorOhmPerKm(1.5, 'class 5'), supplyV: 24 }
    expectValue(cableDrop(given), 2.128, 0.005)
    const percent = valueIn(cableDropPercent(given))
    expect(percent).toBeCloseTo(8.87, 2)
    expect(judge(percent, { high: mostDropPercent.value })).toBe('fail')
    expect(cableDropPercent({ ...given, supplyV: 0 })).toHaveProperty('impossible', 'without a `supply` there is no share of it')
  })

  test('OU-07: the smallest size for 1.2 V', () => {
    const found = smallestSize(run, 'class 5', 1.2)
    if (!found || !('areaMm2' in found)) throw new Error(JSON.stringify(found))
    expect(found.areaMm2).toBe(4)
    expectValue(found.drop, 0.792, 1e-9)
    expect(smallestSize(run, 'class 5', 0.0001)).toBeUndefined()
    expect(smallestSize({ lengthM: 40 }, 'class 5', 1)).toEqual({ notComputed: ['loadCurrent'] })
  })

  test('OU-08: 13.3 Ω/km at 70 °C', () => expectValue(warmResistance({ resistanceOhmPerKm: 13.3, copperPerK, conductorC: 70 }), 15.91, 0.05))

  test('the straight line does not reach down to where copper would have no resistance', () => {
    expect(warmResistance({ resistanceOhmPerKm: 13.3, copperPerK, conductorC: -240 })).toHaveProperty('impossible')
    expectValue(warmResistance({ resistanceOhmPerKm: 13.3, copperPerK, conductorC: -40 }), 10.164, 0.001)
  })

  // Source: ASTM B258.
  test('OU-09: gauge 18, solid', () => {
    const area = valueIn(gaugeArea({ gauge: 18 }))
    expect(area).toBeCloseTo(0.823, 3)
    expectValue(solidResistance({ areaMm2: area, resistivityOhmMm2PerM: copperResistivity }), 20.95, 0.1)
  })

  test('a size that is not in the table has no resistance', () => {
    expect(conductorOhmPerKm(0.8, 'class 5')).toBeUndefined()
    expect(conductorOhmPerKm(0.34, 'class 2')).toBeUndefined()
    expect(conductorSizesMm2('class 2')).toEqual([0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16])
  })
})

// Source: IEC 60204-1, 18.2 and 18.3.
describe('electrical tests', () => {
  test('OU-10: insulation', () => {
    expect([0.9, 1, 250].map((mohm) => insulationVerdict(mohm, 500, leastInsulation))).toEqual(['fail', 'pass', 'pass'])
    expect([insulationVerdict(250, 250, leastInsulation), insulationVerdict(Number.NaN, 500, leastInsulation)]).toEqual(['no verdict', 'no verdict'])
  })

  test('OU-11, OU-12: bonding', () => {
    const expected = valueIn(wireResistance({ lengthM: 12, resistanceOhmPerKm: conductorOhmPerKm(2.5, 'class 5') }))
    expect(Math.abs(1000 * expected - 95.8)).toBeLessThan(1)
    expectValue(bondingResistance({ measuredV: 0.62, injectedA: 10 }), 62, 0.1)
  })
})

// Source: common practice.
test('motors and cylinders', () => {
  expect(valueIn(synchronousSpeed({ frequencyHz: 50, poles: 4 }))).toBe(1500)
  expectValue(slip({ synchronousPerMin: 1500, speedPerMin: 1455 }), 3, 1e-9)
  expect(synchronousSpeed({ frequencyHz: 50, poles: 3 })).toHaveProperty('impossible')
  expectValue(phaseImbalance({ phaseA: 10, phaseB: 10.5, phaseC: 9.5 }), 10, 1e-9)
  expect(judge(valueIn(phaseImbalance({ phaseA: 10, phaseB: 10.2, phaseC: 10 })), { high: mostImbalance.value })).toBe('pass')
  expectValue(cylinderForce({ pressureBar: 6, boreMm: 32 }), 482.5, 0.05)
})
