import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { elementOfThreeWires, leadError, platinumResistance, platinumSlope, platinumTemperature } from '../../src/signals/platinum.ts'
import { classRangesC, platinumLimits, platinumTolerance } from '../../src/signals/platinum-class.ts'
import { fitSteinhart, steinhartTemperature, thermistorResistance, thermistorTemperature } from '../../src/signals/thermistor.ts'
import { thermocouples } from '../../src/signals/thermocouple.ts'
import { thermocoupleTolerance } from '../../src/signals/thermocouple-class.ts'
import type { ThermocoupleType } from '../../src/signals/thermocouple-coefficients.ts'
import { expectValue, valueIn } from './expect-value.ts'

const pt100 = { iceResistanceOhm: 100 }
const pt1000 = { iceResistanceOhm: 1000 }

// Source: IEC 60751, equation and table.
describe('platinum', () => {
  test.each([
    ['RT-01', -50, 80.306],
    ['RT-02', 0, 100],
    ['RT-03', 25, 109.735],
    ['RT-04', 100, 138.505],
    ['RT-05', 200, 175.856],
    ['RT-06', 300, 212.051],
    ['RT-07', 400, 247.092],
    ['RT-08', 600, 313.708],
  ])('%s: Pt100 at %d °C', (_, temperatureC, expected) => expectValue(platinumResistance({ ...pt100, temperatureC }), expected, 0.005))

  test('RT-09: Pt1000 at 85 °C', () => expectValue(platinumResistance({ ...pt1000, temperatureC: 85 }), 1328.03, 0.05))

  test.each([
    ['RT-10', 119.4, 50.01],
    ['RT-11', 80.31, -49.99],
  ])('%s: Pt100 of %d Ω', (_, elementOhm, expected) => expectValue(platinumTemperature({ ...pt100, elementOhm }), expected, 0.02))

  // Source: the published table of IEC 60751, to two places.
  test.each([
    [-200, 18.52],
    [-150, 39.72],
    [-100, 60.26],
    [-20, 92.16],
    [50, 119.4],
    [150, 157.33],
    [250, 194.1],
    [500, 280.98],
    [700, 345.28],
    [850, 390.48],
  ])('table: %d °C', (temperatureC, expected) => expectValue(platinumResistance({ ...pt100, temperatureC }), expected, 0.00501))

  test('out of range, and a resistance that no temperature has', () => {
    expect(platinumResistance({ ...pt100, temperatureC: 851 })).toHaveProperty('impossible')
    expect(platinumTemperature({ ...pt100, elementOhm: 0 })).toHaveProperty('impossible')
    expect(platinumTemperature({ elementOhm: 100 })).toEqual({ notComputed: ['iceResistance'] })
  })

  // Source: IEC 60751, tolerance classes; their ranges from memory.
  test('RT-12: classes at 100 °C', () => {
    const at = (name: 'AA' | 'A' | 'B' | 'C') => platinumTolerance({ temperatureC: 100 }, name, classRangesC['wire-wound'][name])
    const found = (['AA', 'A', 'B', 'C'] as const).map((name) => at(name))
    expect(found.map((it) => ('value' in it ? it.value : Number.NaN))).toEqual([0.27, 0.35, 0.8, 1.6].map((it) => expect.closeTo(it, 9)))
  })

  test('RT-13: class B in ohms at 100 °C', () => {
    const limits = platinumLimits({ ...pt100, temperatureC: 100 }, 'B', classRangesC.film.B)
    if (!('low' in limits)) throw new Error(JSON.stringify(limits))
    expectValue(limits.low, 138.202, 0.005)
    expectValue(limits.high, 138.809, 0.005)
  })

  test('a class does not reach beyond its range', () => {
    expect(platinumTolerance({ temperatureC: 151 }, 'AA', classRangesC.film.AA)).toEqual({ refused: 'outside-class-range' })
    expect(platinumTolerance({}, 'AA', classRangesC.film.AA)).toEqual({ notComputed: ['temperature'] })
    expect(platinumTolerance({ temperatureC: 150 }, 'AA', classRangesC.film.AA)).toHaveProperty('value')
  })

  test('RT-14, RT-15, RT-16: leads', () => {
    expectValue(leadError('2-wire', { ...pt100, temperatureC: 0, leadOhm: 0.25 }), 1.279, 0.005)
    expectValue(leadError('2-wire', { ...pt1000, temperatureC: 0, leadOhm: 0.25 }), 0.128, 0.001)
    expectValue(leadError('3-wire', { ...pt100, temperatureC: 0, leadOhm: 5, leadMismatch: 0.01 }), 0.128, 0.002)
    expectValue(leadError('4-wire', {}), 0, 0)
    expect(leadError('3-wire', { ...pt100, temperatureC: 0, leadOhm: 5 })).toEqual({ notComputed: ['leadMismatch'] })
    expectValue(elementOfThreeWires({ acrossOhm: 110.3, pairOhm: 0.5 }), 109.8, 1e-9)
    expectValue(platinumSlope({ ...pt100, temperatureC: 100 }), 0.3793, 0.00005)
    expectValue(platinumSlope({ ...pt100, temperatureC: -100 }), 0.4053, 0.00005)
  })
})

/** Every whole degree of a table: its rows hold the voltage at their temperature and at up to ten further degrees. */
function tableOf(type: ThermocoupleType): Map<number, number> {
  const text = readFileSync(`tests/fixtures/thermocouple/type_${type.toLowerCase()}.tab`, 'utf8')
  const [table = ''] = text.split(/^\*{5}/m)
  const points = new Map<number, number>()
  let step = -1
  for (const line of table.split('\n')) {
    const numbers = line.trim().split(/\s+/).map(Number)
    if (line.includes('°C')) step = /°C\s+0\s+-1/.test(line) ? -1 : 1
    else if (numbers.length > 1 && numbers.every(Number.isFinite)) {
      const [from = Number.NaN, ...voltages] = numbers
      for (const [index, voltage] of voltages.entries()) points.set(from + step * index, voltage)
    }
  }
  return points
}

// Source: NIST ITS-90 Thermocouple Database, SRD 60.
describe('thermocouples', () => {
  test.each([
    ['TC-01', 'K', 25, 1],
    ['TC-02', 'K', 100, 4.096],
    ['TC-03', 'K', 300, 12.209],
    ['TC-04', 'K', -100, -3.554],
    ['TC-05', 'K', 1000, 41.276],
    ['TC-06', 'J', 25, 1.277],
    ['TC-07', 'J', 200, 10.779],
    ['TC-08', 'J', 600, 33.102],
    ['TC-09', 'T', 25, 0.992],
    ['TC-10', 'T', 100, 4.279],
    ['TC-11', 'T', -100, -3.379],
  ] as const)('%s: type %s at %d °C', (_, type, temperatureC, expected) =>
    expectValue(thermocouples[type].voltage({ temperatureC }), expected, 0.001),
  )

  test('every point of the three tables', () => {
    const tables = (['J', 'K', 'T'] as const).map((type) => [type, tableOf(type)] as const)
    expect(tables.reduce((sum, [, points]) => sum + points.size, 0)).toBe(3725)
    const wrong = tables.flatMap(([type, points]) =>
      [...points].filter(([temperatureC, printed]) => Math.abs(valueIn(thermocouples[type].voltage({ temperatureC })) - printed) > 0.0005 + 1e-9),
    )
    expect(wrong).toEqual([])
  })

  test('TC-12, TC-13, TC-14: terminals at 25 °C, and leads that are swapped', () => {
    const { terminalVoltage, temperature } = thermocouples.K
    const voltage = terminalVoltage({ temperatureC: 100, terminalC: 25 })
    expectValue(voltage, 3.096, 0.002)
    expectValue(temperature({ terminalMv: 4.096, terminalC: 25 }), 124.3, 0.1)
    expectValue(temperature({ terminalMv: -valueIn(voltage), terminalC: 25 }), -55.8, 0.3)
  })

  test('the wrong type: J at 200 °C read as K', () => {
    const terminalMv = valueIn(thermocouples.J.terminalVoltage({ temperatureC: 200, terminalC: 25 }))
    expectValue(thermocouples.K.temperature({ terminalMv, terminalC: 25 }), 258.5, 0.05)
  })

  test('out of range', () => {
    expect(thermocouples.T.voltage({ temperatureC: 401 })).toHaveProperty('impossible')
    expect(thermocouples.K.temperature({ terminalMv: 60, terminalC: 25 })).toHaveProperty('impossible')
    expect(thermocouples.K.temperature({ terminalMv: 1 })).toEqual({ notComputed: ['terminalTemperature'] })
  })

  // Source: IEC 60584-1, tolerance classes.
  test('TC-15, TC-16: classes', () => {
    const tolerance = (type: ThermocoupleType, name: 'class 1' | 'class 2' | 'class 3', temperatureC: number) => {
      const found = thermocoupleTolerance({ temperatureC }, type, name)
      return 'value' in found ? found.value : found
    }
    expect([tolerance('K', 'class 1', 500), tolerance('K', 'class 2', 500)]).toEqual([2, 3.75])
    expect(tolerance('T', 'class 1', 100)).toBe(0.5)
    expect(tolerance('K', 'class 3', -200)).toBeCloseTo(3, 9)
    expect(tolerance('J', 'class 3', 0)).toEqual({ refused: 'outside-class-range' })
    expect(tolerance('K', 'class 1', 1001)).toEqual({ refused: 'outside-class-range' })
  })
})

// Sources: IEC 60584-1; IEC 60751, from memory.
describe('where a class ends', () => {
  test.each([
    ['K', 'class 1', -40, 1000],
    ['K', 'class 2', -40, 1200],
    ['K', 'class 3', -200, 40],
    ['J', 'class 1', -40, 750],
    ['J', 'class 2', -40, 750],
    ['T', 'class 1', -40, 350],
    ['T', 'class 2', -40, 350],
    ['T', 'class 3', -200, 40],
  ] as const)('type %s, %s, from %d to %d °C', (type, name, from, to) => {
    const at = (temperatureC: number) => 'value' in thermocoupleTolerance({ temperatureC }, type, name)
    expect([from - 0.1, from, to, to + 0.1].map(at)).toEqual([false, true, true, false])
  })

  test.each([
    ['wire-wound', 'AA', -50, 250],
    ['wire-wound', 'A', -100, 450],
    ['wire-wound', 'B', -196, 600],
    ['wire-wound', 'C', -196, 600],
    ['film', 'AA', 0, 150],
    ['film', 'A', -30, 300],
    ['film', 'B', -50, 500],
    ['film', 'C', -50, 600],
  ] as const)('%s, class %s, from %d to %d °C', (element, name, from, to) => {
    const at = (temperatureC: number) => 'value' in platinumTolerance({ temperatureC }, name, classRangesC[element][name])
    expect([from - 0.1, from, to, to + 0.1].map(at)).toEqual([false, true, true, false])
  })

  test('the tolerance is fixed as far as its share of the temperature is smaller', () => {
    const at = (type: ThermocoupleType, name: 'class 1' | 'class 2' | 'class 3', temperatureC: number) => {
      const found = thermocoupleTolerance({ temperatureC }, type, name)
      return 'value' in found ? found.value : Number.NaN
    }
    expect([at('K', 'class 1', 375), at('K', 'class 2', 333), at('J', 'class 1', 0), at('J', 'class 2', 0)]).toEqual([1.5, 2.5, 1.5, 2.5])
    expect([at('T', 'class 1', 0), at('T', 'class 2', 0), at('T', 'class 3', 0), at('K', 'class 3', 0)]).toEqual([0.5, 1, 1, 2.5])
    const shares = [at('J', 'class 1', 750), at('J', 'class 2', 750), at('T', 'class 1', 350), at('T', 'class 2', 350), at('T', 'class 3', -200)]
    expect(shares).toEqual([3, 5.625, 1.4, 2.625, 3].map((it) => expect.closeTo(it, 9)))
  })
})

// Source: beta equation; Steinhart–Hart, with published figures of two fits.
describe('thermistors', () => {
  const beta = { referenceOhm: 10_000, betaK: 3950, referenceC: 25 }

  test('NT-01: NTC of 10 kΩ at 50 °C', () => {
    expectValue(thermistorResistance({ ...beta, temperatureC: 50 }), 3588, 1)
    expectValue(thermistorTemperature({ ...beta, thermistorOhm: 3588 }), 50, 0.01)
  })

  test('NT-02: a fit through three points', () => {
    const fit = fitSteinhart([
      [-25, 87041],
      [0, 27326],
      [25, 10000],
    ])
    expect(fit).toEqual({
      steinhartA: expect.closeTo(8.97554e-4, 8),
      steinhartB: expect.closeTo(2.50179e-4, 8),
      steinhartC: expect.closeTo(1.94834e-7, 11),
    })
    expectValue(steinhartTemperature({ ...fit, thermistorOhm: 7000 }), 34.7531, 0.001)
    const other = fitSteinhart([
      [0, 27445],
      [25, 10000],
      [50, 4160],
    ])
    expect(other).toEqual({
      steinhartA: expect.closeTo(8.40225e-4, 8),
      steinhartB: expect.closeTo(2.59635e-4, 8),
      steinhartC: expect.closeTo(1.56744e-7, 11),
    })
    expect(
      fitSteinhart([
        [0, 100],
        [0, 100],
        [50, 90],
      ]),
    ).toBeUndefined()
  })

  test('a resistance that no temperature has', () => {
    expect(thermistorTemperature({ ...beta, thermistorOhm: 1e-30 })).toHaveProperty('impossible')
    expect(steinhartTemperature({ steinhartA: -1, steinhartB: 0, steinhartC: 0, thermistorOhm: 100 })).toHaveProperty('impossible')
  })
})
