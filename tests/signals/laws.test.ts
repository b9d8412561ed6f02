import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Computed, isComputed, type Result } from '../../src/law/law.ts'
import { inputLimits, inputState } from '../../src/signals/digital-input.ts'
import type { InputName } from '../../src/signals/inputs.ts'
import * as platinum from '../../src/signals/platinum.ts'
import * as proximity from '../../src/signals/proximity.ts'
import * as scaling from '../../src/signals/scaling.ts'
import { terminalVoltages } from '../../src/signals/terminal-voltage.ts'
import * as thermistor from '../../src/signals/thermistor.ts'
import { thermocoupleRangeC, thermocouples } from '../../src/signals/thermocouple.ts'
import { judge } from '../../src/signals/verdict.ts'
import { type Inputs, inputNames, laws } from './every-law.ts'
import { valueIn } from './expect-value.ts'

const anything = fc.record(
  Object.fromEntries(inputNames.map((name) => [name, fc.option(fc.double(), { nil: undefined })])) as Record<
    InputName,
    fc.Arbitrary<number | undefined>
  >,
)

test('there are laws to try', () => expect(laws.length).toBeGreaterThan(50))

describe.each(laws)('%s', (_, law) => {
  test('gives a finite value, what is missing, or what is impossible: never NaN, Infinity or a throw', () => {
    fc.assert(
      fc.property(anything, (given) => {
        const result = law(given)
        if (isComputed(result)) expect(Number.isFinite(result.value)).toBe(true)
        else expect('notComputed' in result ? result.notComputed.length : result.impossible.length).toBeGreaterThan(0)
      }),
    )
  })

  test('names what is missing, and computes with nothing else', () => {
    const missing = law(Object.fromEntries(inputNames.map((name) => [name, undefined])) as Inputs)
    expect('notComputed' in missing && missing.notComputed.length > 0).toBe(true)
  })
})

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** `back` leads where `there` came from. */
function goesBack(argument: fc.Arbitrary<number>, there: (x: number) => Result, back: (y: number) => Result): void {
  fc.assert(
    fc.property(argument, (x) => {
      const found = valueIn(back(valueIn(there(x))))
      expect(Math.abs(found - x), `${x} came back as ${found}`).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(x)))
    }),
    { numRuns: 500 },
  )
}
/** A larger argument gives a larger value. */
function rises(argument: fc.Arbitrary<number>, law: (x: number) => Result, leastStep: number): void {
  fc.assert(
    fc.property(argument, argument, (a, b) => {
      fc.pre(Math.abs(a - b) > leastStep)
      expect(valueIn(law(Math.max(a, b)))).toBeGreaterThan(valueIn(law(Math.min(a, b))))
    }),
    { numRuns: 500 },
  )
}

describe('there and back, over the whole range', () => {
  test.each([100, 1000])('platinum of %d Ω', (iceResistanceOhm) => {
    const there = (temperatureC: number) => platinum.platinumResistance({ temperatureC, iceResistanceOhm })
    goesBack(within(-200, 850), there, (elementOhm) => platinum.platinumTemperature({ elementOhm, iceResistanceOhm }))
    rises(within(-200, 850), there, 1e-9)
  })

  test.each(['J', 'K', 'T'] as const)('type %s, with terminals at any temperature of a cabinet', (type) => {
    const { low, high } = thermocoupleRangeC(type)
    for (const terminalC of [-20, 0, 25, 60]) {
      goesBack(
        within(low, high),
        (temperatureC) => thermocouples[type].terminalVoltage({ temperatureC, terminalC }),
        (terminalMv) => thermocouples[type].temperature({ terminalMv, terminalC }),
      )
    }
    rises(within(low, high), (temperatureC) => thermocouples[type].voltage({ temperatureC }), 1e-3)
  })

  test.each(Object.entries(scaling.analogueSignals))('%s', (_, { ends }) => {
    fc.assert(
      fc.property(within(-1e4, 1e4), within(1e-2, 1e4), fc.boolean(), within(-0.2, 1.2), (from, span, falls, share) => {
        const range = falls ? { rangeLow: from + span, rangeHigh: from } : { rangeLow: from, rangeHigh: from + span }
        const value = from + share * span
        const signal = valueIn(scaling.signalOfValue({ ...ends, ...range, value }))
        const back = valueIn(scaling.valueOfSignal({ ...ends, ...range, signal }))
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(value)))
      }),
    )
  })

  test('counts', () => {
    const card = { ...scaling.analogueSignals['4-20 mA'].ends, countsLow: 0, countsHigh: 27648 }
    const there = (signal: number) => scaling.countsOfSignal({ ...card, signal })
    goesBack(within(0, 24), there, (counts) => scaling.signalOfCounts({ ...card, counts }))
    rises(within(0, 24), there, 1e-9)
  })

  test('thermistor', () => {
    const ntc = { referenceOhm: 10_000, betaK: 3950, referenceC: 25 }
    const there = (temperatureC: number) => thermistor.thermistorResistance({ ...ntc, temperatureC })
    goesBack(within(-40, 150), there, (thermistorOhm) => thermistor.thermistorTemperature({ ...ntc, thermistorOhm }))
    rises(within(-40, 150), (t) => there(-t), 1e-6)
  })
})

describe('where two pieces of a function meet', () => {
  test.each([
    ['J', 760],
    ['K', 0],
    ['T', 0],
  ] as const)('type %s at %d °C', (type, joint) => {
    const at = (temperatureC: number) => valueIn(thermocouples[type].voltage({ temperatureC }))
    expect(Math.abs(at(joint + 1e-9) - at(joint - 1e-9))).toBeLessThan(0.001)
  })

  test('platinum at 0 °C', () => {
    const at = (temperatureC: number) => valueIn(platinum.platinumResistance({ temperatureC, iceResistanceOhm: 100 }))
    expect(Math.abs(at(1e-9) - at(-1e-9))).toBeLessThan(1e-6)
  })
})

describe('verdicts', () => {
  test('a wider tolerance never turns pass into fail', () => {
    fc.assert(
      fc.property(within(-1e6, 1e6), within(-1e6, 1e6), within(0, 1e5), within(0, 1e5), (value, middle, narrow, more) => {
        const band = (half: number) => ({ low: middle - half, high: middle + half })
        if (judge(value, band(narrow)) === 'pass') expect(judge(value, band(narrow + more))).toBe('pass')
      }),
    )
  })

  test('a value on its limit passes', () => {
    fc.assert(
      fc.property(within(-1e6, 1e6), within(0, 1e5), (low, span) => {
        const band = { low, high: low + span }
        expect([judge(band.low, band), judge(band.high, band)]).toEqual(['pass', 'pass'])
      }),
    )
  })

  test('must be on and must be off never meet, and both grow with the rated distance', () => {
    fc.assert(
      fc.property(within(0.1, 100), within(0.1, 1), fc.constantFrom('inductive', 'capacitive'), (ratedDistanceMm, materialFactor, principle) => {
        const limits = (Sn: number) => {
          const { mustBeOnTo, mustBeOffFrom } = proximity.proximityLimits(
            { ratedDistanceMm: Sn, materialFactor },
            proximity.distanceFactors[principle],
          )
          return [valueIn(mustBeOnTo), valueIn(mustBeOffFrom)] as const
        }
        const [on, off] = limits(ratedDistanceMm)
        expect(on).toBeLessThan(off)
        const [twiceOn, twiceOff] = limits(2 * ratedDistanceMm)
        expect([twiceOn, twiceOff]).toEqual([expect.closeTo(2 * on, 6), expect.closeTo(2 * off, 6)])
      }),
    )
  })

  test('states of an input follow each other as the voltage rises', () => {
    const order = ['off', 'no state', 'on']
    fc.assert(
      fc.property(within(-3, 30), within(-3, 30), fc.constantFrom('Type 1', 'Type 2', 'Type 3'), (a, b, type) => {
        const rank = (volts: number) => order.indexOf(inputState(volts, inputLimits[type]) ?? '')
        expect(rank(Math.max(a, b))).toBeGreaterThanOrEqual(rank(Math.min(a, b)))
      }),
    )
  })
})

test('a lower supply never raises the voltage at a terminal', () => {
  const part = {
    dropV: within(0, 8),
    inputCurrentMa: within(0, 15),
    noLoadCurrentMa: within(0, 20),
    supplyWireOhm: within(0, 50),
    signalWireOhm: within(0, 50),
  }
  const circuit = fc.record({ ...part, leakageMa: within(0, 2), inputResistanceOhm: within(500, 20_000) })
  const pairings = [
    ['pnp', 'sinking'],
    ['npn', 'sourcing'],
    ['2-wire', 'sinking'],
    ['2-wire', 'sourcing'],
    ['dry contact', 'sourcing'],
  ] as const
  fc.assert(
    fc.property(circuit, within(12, 30), within(12, 30), fc.constantFrom(...pairings), (given, a, b, [sensor, card]) => {
      const at = (supplyV: number) => {
        const voltages = terminalVoltages(sensor, card, { ...given, supplyV })
        if ('refused' in voltages) throw new Error(voltages.refused)
        return voltages
      }
      const [low, high] = [at(Math.min(a, b)), at(Math.max(a, b))]
      const value = (result: Result) => (isComputed(result) ? (result as Computed).value : Number.NEGATIVE_INFINITY)
      expect(value(low.on)).toBeLessThanOrEqual(value(high.on))
      expect(value(low.off)).toBeLessThanOrEqual(value(high.off))
    }),
  )
})
