import { describe, expect, test } from 'vitest'
import { connectorPins } from '../../src/signals/connector-pins.ts'
import { restsOn } from '../../src/signals/law.ts'
import { materialFactor } from '../../src/signals/material-factor.ts'
import { closedContactCurrent, namurAmplifier, namurCurrent, namurLimits, namurState, openContactCurrent } from '../../src/signals/namur.ts'
import {
  distanceFactors,
  distanceOnMaterial,
  effectiveFactors,
  gapVerdict,
  mountedGapVerdict,
  proximityLimits,
  reducedDistance,
  standardTargetSide,
} from '../../src/signals/proximity.ts'
import { mountingClearances, mountingFaults } from '../../src/signals/proximity-mounting.ts'
import { differentialTravel, hysteresis, mostTravel, targetRate, targetTime } from '../../src/signals/switching.ts'
import { atMost, judge } from '../../src/signals/verdict.ts'
import { expectValue, valueIn } from './expect-value.ts'

const { inductive, capacitive } = distanceFactors

// Source: IEC 60947-5-2, operating distances.
describe('distances on the standard target', () => {
  test.each([
    ['PX-01', 4, 3.24, 0.005],
    ['PX-02', 5, 4.05, 0.005],
    ['PX-03', 0.6, 0.486, 0.0005],
  ])('%s: assured distance, inductive, Sn %d mm', (_, ratedDistanceMm, expected, tolerance) => {
    expectValue(proximityLimits({ ratedDistanceMm, materialFactor: 1 }, inductive).mustBeOnTo, expected, tolerance)
  })

  test('PX-04: assured distance, capacitive, from memory', () => {
    const { mustBeOnTo } = proximityLimits({ ratedDistanceMm: 8, materialFactor: 1 }, capacitive)
    expectValue(mustBeOnTo, 5.76, 0.005)
    expect('value' in mustBeOnTo && restsOn(mustBeOnTo)).toEqual({ generic: false, fromMemory: true })
  })

  test('PX-05, PX-06: bands of one device and of use', () => {
    const factors = [effectiveFactors.lowest, effectiveFactors.highest, inductive.lowestUsable, inductive.highestUsable]
    const distances = factors.map((distanceFactor) => valueIn(distanceOnMaterial({ ratedDistanceMm: 5, materialFactor: 1, distanceFactor })))
    for (const [index, expected] of [4.5, 5.5, 4.05, 6.05].entries()) expect(distances[index]).toBeCloseTo(expected, 6)
  })

  test('PX-07: off from 1.43 Sn, capacitive 1.54 Sn', () => {
    expectValue(proximityLimits({ ratedDistanceMm: 5, materialFactor: 1 }, inductive).mustBeOffFrom, 7.15, 0.005)
    expectValue(proximityLimits({ ratedDistanceMm: 5, materialFactor: 1 }, capacitive).mustBeOffFrom, 7.7, 0.005)
  })

  // Source: IEC 60947-5-2, standard target.
  test('PX-08, PX-09: side of the standard target', () => {
    expect(valueIn(standardTargetSide({ faceDiameterMm: 12, ratedDistanceMm: 8 }))).toBe(24)
    expect(valueIn(standardTargetSide({ faceDiameterMm: 18, ratedDistanceMm: 5 }))).toBe(18)
  })
})

// Source: IEC 60947-5-2, correction factor, with the factor of a data sheet; PX-12 and PX-13 follow from 0.81·k·Sn.
describe('distances on a material', () => {
  test('PX-10, PX-11: aluminium', () => {
    expectValue(reducedDistance({ ratedDistanceMm: 8, materialFactor: 0.4 }), 3.2, 0.005)
    expectValue(proximityLimits({ ratedDistanceMm: 8, materialFactor: 0.4 }, inductive).mustBeOnTo, 2.592, 0.001)
  })

  test('PX-12, PX-13: a gap of 1.50 mm fails and one of 1.40 mm passes; on the limit it passes', () => {
    const limit = valueIn(proximityLimits({ ratedDistanceMm: 4, materialFactor: 0.45 }, inductive).mustBeOnTo)
    expect([1.5, 1.4, 1.458].map((gap) => mountedGapVerdict(gap, limit))).toEqual(['fail', 'pass', 'pass'])
    expect(mountedGapVerdict(Number.NaN, limit)).toBe('no verdict')
  })

  test('PX-14: off from 1.43·k·Sn on stainless steel', () => {
    expectValue(proximityLimits({ ratedDistanceMm: 10, materialFactor: 0.7 }, inductive).mustBeOffFrom, 10.01, 0.005)
  })

  test('on, no verdict, off', () => {
    const seen = (gapMm: number, sees: boolean) => gapVerdict(gapMm, sees, 3.24, 5.72)
    expect([seen(3.24, true), seen(3.24, false), seen(5.72, false), seen(5.72, true)]).toEqual(['pass', 'fail', 'pass', 'fail'])
    expect([seen(4, true), seen(4, false), seen(Number.NaN, true)]).toEqual(['no verdict', 'no verdict', 'no verdict'])
  })

  test('PX-25: a material without a factor is refused', () => {
    expect(materialFactor('inductive', 'titanium')).toEqual({ refused: 'material-without-factor' })
    expect(materialFactor('inductive', 'constructor')).toEqual({ refused: 'material-without-factor' })
    expect(materialFactor('inductive', 'titanium', 0.6)).toEqual({ factor: { value: 0.6, basis: 'data sheet' } })
  })

  test('without a data sheet the low end is used, marked as generic, and the range is shown', () => {
    expect(materialFactor('inductive', 'brass')).toEqual({ factor: { value: 0.32, basis: 'generic' }, range: [0.32, 0.51] })
    expect(materialFactor('capacitive', 'wood')).toEqual({ factor: { value: 0.2, basis: 'generic', fromMemory: true }, range: [0.2, 0.7] })
    const brass = materialFactor('inductive', 'brass')
    if (!('factor' in brass)) throw new Error('refused')
    const { mustBeOnTo } = proximityLimits({ ratedDistanceMm: 4, materialFactor: brass.factor }, inductive)
    expect('value' in mustBeOnTo && restsOn(mustBeOnTo).generic).toBe(true)
  })

  test('nothing is put in the place of what is missing', () => {
    expect(proximityLimits({ materialFactor: 1 }, inductive).mustBeOnTo).toEqual({ notComputed: ['ratedDistance'] })
    expect(proximityLimits({}, inductive).mustBeOffFrom).toEqual({ notComputed: ['materialFactor', 'ratedDistance'] })
    expect(proximityLimits({ ratedDistanceMm: -4, materialFactor: 1 }, inductive).mustBeOnTo).toEqual({
      impossible: '`ratedDistance` must be more than zero',
      of: ['ratedDistance'],
    })
  })
})

// Source: IEC 60947-5-2, differential travel.
test('PX-15, PX-16, PX-17: hysteresis', () => {
  expectValue(differentialTravel({ travelFraction: mostTravel, effectiveDistanceMm: 4.2 }), 0.84, 0.005)
  const inPercent = (onDistanceMm: number, offDistanceMm: number) => valueIn(hysteresis({ onDistanceMm, offDistanceMm }))
  expect(inPercent(4.1, 4.7)).toBeCloseTo(14.63, 2)
  expect(inPercent(4, 5)).toBeCloseTo(25, 6)
  const verdict = (on: number, off: number) => judge(inPercent(on, off), { high: 100 * mostTravel.value })
  expect([verdict(4.1, 4.7), verdict(4, 5)]).toEqual(['pass', 'fail'])
  expect(hysteresis({ onDistanceMm: 5, offDistanceMm: 4 })).toHaveProperty('impossible')
})

test('PX-18: 24 teeth at 1200 min⁻¹ pass at 480 Hz, too fast for 400 Hz', () => {
  const rate = valueIn(targetRate({ targets: 24, speedPerMin: 1200 }))
  expect(rate).toBe(480)
  expect(judge(rate, { high: 400 })).toBe('fail')
  expectValue(targetTime({ targetLengthMm: 12, movingMPerS: 1.5 }), 8, 1e-9)
})

// Source: IEC 60947-5-2, annex A; multiples from memory but for 2·Sn.
test('PX-19: clearances of a switch that is not flush', () => {
  const { freeDepth, background, freeDiameter } = mountingClearances('non-flush', { ratedDistanceMm: 8, faceDiameterMm: 12 })
  expect([freeDepth, background, freeDiameter].map(valueIn)).toEqual([16, 24, 36])
  expect('value' in freeDepth && restsOn(freeDepth).fromMemory).toBe(false)
  expect('value' in background && restsOn(background)).toEqual({ generic: true, fromMemory: true })
  const all = (mounting: 'flush' | 'non-flush') =>
    Object.values(mountingClearances(mounting, { ratedDistanceMm: 8, faceDiameterMm: 12 })).map(valueIn)
  // Depth, diameter, background, side by side, face to face; the last two common practice.
  expect(all('non-flush')).toEqual([16, 36, 24, 24, 48])
  expect(all('flush')).toEqual([0, 12, 24, 12, 48])
})

test('what is wrong with a mounted switch', () => {
  const limits = { assuredMm: 3.24, ratedDistanceMm: 4, standardSideMm: 12, ratedHz: 400 }
  const good = { type: 'non-flush', mount: 'non-flush', gapMm: 2, vibrationMm: 0.5, targetSideMm: 12, eventsHz: 400, ...limits } as const
  expect(mountingFaults(good)).toEqual([])
  expect(mountingFaults({})).toEqual([])
  expect(mountingFaults({ ...good, mount: 'flush', gapMm: 3.3, vibrationMm: 3, targetSideMm: 11, eventsHz: 401 })).toEqual([
    'non-flush-mounted-flush',
    'gap-beyond-assured',
    'may-touch',
    'target-too-small',
    'target-too-fast',
  ])
})

// Source: IEC 60947-5-6, circuit data and limits; fault limits from memory.
describe('NAMUR', () => {
  test('PX-20, PX-21: a contact with 1 kΩ and 10 kΩ', () => {
    const contact = { ...namurAmplifier, seriesResistanceOhm: 1000, parallelResistanceOhm: 10_000 }
    expectValue(closedContactCurrent(contact), 4.1, 0.01)
    expectValue(openContactCurrent(contact), 0.683, 0.005)
  })

  test('PX-22: short circuits of 360 Ω and 100 Ω', () => {
    expectValue(namurCurrent({ ...namurAmplifier, circuitResistanceOhm: 360 }), 6.03, 0.01)
    expectValue(namurCurrent({ ...namurAmplifier, circuitResistanceOhm: 100 }), 7.45, 0.01)
  })

  test('PX-23: states by current', () => {
    expect([0.02, 0.8, 1.6, 2.6, 7.6].map((mA) => namurState(mA))).toEqual(['break', 'high impedance', 'no state', 'low impedance', 'short'])
    expect([0.05, 0.35, 1.2, 2.1, 6.0, 6.01, 7.45].map((mA) => namurState(mA))).toEqual([
      'possible break',
      'high impedance',
      'high impedance',
      'low impedance',
      'low impedance',
      'possible short',
      'possible short',
    ])
    expect(namurState(Number.NaN)).toBeUndefined()
  })

  test('an amplifier with its own limit replaces the one from memory', () => {
    expect(namurState(5.9, { ...namurLimits, possibleShortMa: { value: 5.85, basis: 'data sheet' } })).toBe('possible short')
  })
})

// Source: IEC 60947-5-2, connections; IEC 61076-2-101.
test('PX-24: pins of a 4-wire switch on M12', () => {
  expect(connectorPins['4-wire'].map(({ pin, core, carries }) => `${pin} ${core} ${carries}`)).toEqual([
    '1 BN L+',
    '2 WH NC output',
    '3 BU L−',
    '4 BK NO output',
  ])
})

test('a value on a limit passes, however the computer rounds it', () => {
  expect(atMost(0.1 + 0.2, 0.3)).toBe(true)
  expect(atMost(0.300001, 0.3)).toBe(false)
  expect(judge(Number.NaN, { high: 1 })).toBe('no verdict')
})
