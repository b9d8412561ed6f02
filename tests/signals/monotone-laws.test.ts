import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isComputed, type Result } from '../../src/law/law.ts'
import { loadVoltage } from '../../src/signals/digital-output.ts'
import { type InputName, inputKinds } from '../../src/signals/inputs.ts'
import * as level from '../../src/signals/level.ts'
import { largestLoop, transmitterVoltage } from '../../src/signals/loop-budget.ts'
import * as pulses from '../../src/signals/pulses.ts'
import * as thermistor from '../../src/signals/thermistor.ts'
import { type Inputs, inputNames, laws } from './every-law.ts'
import { valueIn } from './expect-value.ts'

/** Laws that rise and fall by their nature. */
const neither: Readonly<Record<string, string>> = {
  phaseImbalance: 'the phase in the middle adds to the mean alone, the others to the difference too',
  platinumSlope: 'its cubic part below zero bends it',
  signalOfValue: 'ends of a range that cross turn it over; along its value the laws of scaling hold it',
  valueOfSignal: 'as before',
  countsOfSignal: 'as before',
  signalOfCounts: 'as before',
}

const shares = ['more than zero and at most one']
/** A value that a device of the trade may have. */
const plausible = (name: InputName) => {
  const { takes } = inputKinds[name]
  if (shares.includes(takes)) return fc.double({ min: 0.05, max: 1, noNaN: true })
  if (takes === 'above −273.15') return fc.double({ min: -150, max: 300, noNaN: true })
  return takes === 'any number' ? fc.double({ min: -50, max: 50, noNaN: true }) : fc.double({ min: 0.1, max: 50, noNaN: true })
}
const given = fc.record(Object.fromEntries(inputNames.map((name) => [name, plausible(name)])) as Record<InputName, fc.Arbitrary<number>>)

describe.each(laws.filter(([name]) => neither[name] === undefined))('%s', (_, law) => {
  test('goes one way along each of its inputs', () => {
    const missing = law(Object.fromEntries(inputNames.map((name) => [name, undefined])) as Inputs)
    const asked = inputNames.filter((name) => 'notComputed' in missing && missing.notComputed.includes(inputKinds[name].quantity))
    expect(asked.length).toBeGreaterThan(0)
    fc.assert(
      fc.property(
        given,
        fc.constantFrom(...asked),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (base, name, one, two) => {
          const start = base[name]
          const step = inputKinds[name].takes === 'more than zero and at most one' ? 0.3 * start : 10
          const at = (value: number) => law({ ...base, [name]: value })
          const three =
            step === 10 ? [start, start + one * step, start + (one + two) * step] : [start * (1 - 0.9 * one), start * (1 - 0.4 * one), start]
          const values = three
            .map(at)
            .filter((it) => isComputed(it))
            .map(({ value }) => value)
          const [a, b, c] = values
          if (a === undefined || b === undefined || c === undefined) return
          const slack = 1e-9 * Math.max(Math.abs(a), Math.abs(b), Math.abs(c))
          const up = b >= a - slack && c >= b - slack
          const down = b <= a + slack && c <= b + slack
          expect(up || down, `${name}: ${three.join(', ')} gave ${values.join(', ')}`).toBe(true)
        },
      ),
      { numRuns: 300 },
    )
  })
})

describe('there and back', () => {
  const pairs: readonly [name: string, (x: number) => Result, (y: number) => Result, number, number][] = [
    [
      'flow',
      (flowLPerMin) => pulses.flowFrequency({ pulsesPerLitre: 450, flowLPerMin }),
      (frequencyHz) => pulses.flowOfFrequency({ pulsesPerLitre: 450, frequencyHz }),
      0,
      1000,
    ],
    [
      'encoder',
      (speedPerMin) => pulses.encoderFrequency({ pulsesPerTurn: 1024, speedPerMin }),
      (frequencyHz) => pulses.encoderSpeed({ pulsesPerTurn: 1024, frequencyHz }),
      0,
      10_000,
    ],
    [
      'level',
      (liquidM) => level.hydrostaticPressure({ densityKgPerM3: 1100, gravityMPerS2: level.standardGravity, liquidM }),
      (pressureKpa) => level.liquidHeight({ densityKgPerM3: 1100, gravityMPerS2: level.standardGravity, pressureKpa }),
      0,
      50,
    ],
    ['echo', (rangeM) => level.echoTime({ rangeM, airC: 20 }), (echoMs) => level.echoDistance({ echoMs, airC: 20 }), 0.01, 20],
  ]
  test.each(pairs)('%s', (_, there, back, low, high) => {
    fc.assert(
      fc.property(fc.double({ min: low, max: high, noNaN: true }), (x) => {
        expect(Math.abs(valueIn(back(valueIn(there(x)))) - x)).toBeLessThanOrEqual(1e-6 * Math.max(1, x))
      }),
    )
  })

  test('Steinhart and Hart through three points, at these points', () => {
    const celsius = fc.tuple(
      fc.double({ min: -40, max: 0, noNaN: true }),
      fc.double({ min: 10, max: 40, noNaN: true }),
      fc.double({ min: 50, max: 150, noNaN: true }),
    )
    const ohmAt = (temperatureC: number) =>
      valueIn(thermistor.thermistorResistance({ referenceOhm: 10_000, betaK: 3950, referenceC: 25, temperatureC }))
    fc.assert(
      fc.property(celsius, ([cold, mild, hot]) => {
        const fit = thermistor.fitSteinhart([
          [cold, ohmAt(cold)],
          [mild, ohmAt(mild)],
          [hot, ohmAt(hot)],
        ])
        if (!fit) throw new Error('no fit')
        for (const t of [cold, mild, hot]) expect(valueIn(thermistor.steinhartTemperature({ ...fit, thermistorOhm: ohmAt(t) }))).toBeCloseTo(t, 6)
      }),
    )
  })
})

describe('a higher supply', () => {
  const supplies = fc.tuple(fc.double({ min: 10, max: 30, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }))
  const never = (law: (supplyV: number) => Result) =>
    fc.assert(
      fc.property(supplies, ([supplyV, more]) => {
        const [low, high] = [law(supplyV), law(supplyV + more)]
        if (isComputed(low)) expect(isComputed(high) && high.value >= low.value).toBe(true)
      }),
    )
  test('never lowers the voltage at a load', () =>
    never((supplyV) => loadVoltage({ supplyV, dropV: 1, loadCurrentA: 0.5, lengthM: 30, resistanceOhmPerKm: 26 })))
  test('never leaves a transmitter less', () => never((supplyV) => transmitterVoltage({ supplyV, currentMa: 20, loadOhm: 266 })))
  test('never allows a loop less', () => never((supplyV) => largestLoop({ supplyV, transmitterV: 9, highestCurrentMa: 22 })))
})
