import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import * as accumulator from '../../src/energy/accumulator.ts'
import * as capacitor from '../../src/energy/capacitor.ts'
import * as oil from '../../src/energy/compressed-liquid.ts'
import * as cooling from '../../src/energy/cool-down.ts'
import * as peak from '../../src/energy/dc-bus-peak.ts'
import * as discharge from '../../src/energy/discharge.ts'
import * as steam from '../../src/energy/flash-steam.ts'
import * as gas from '../../src/energy/gas-energy.ts'
import { type InputName, inputKinds } from '../../src/energy/inputs.ts'
import type { Result } from '../../src/energy/law.ts'
import * as oilDischarge from '../../src/energy/oil-discharge-time.ts'
import * as pressureTest from '../../src/energy/pressure-test.ts'
import * as load from '../../src/energy/raised-load.ts'
import * as rotor from '../../src/energy/rotor.ts'
import { roundedUpS } from '../../src/energy/round-up.ts'
import * as runDown from '../../src/energy/run-down.ts'
import * as spring from '../../src/energy/spring.ts'
import { energyOfStore, type Store, type StoreKind, waitOfStore } from '../../src/energy/store.ts'
import * as vacuum from '../../src/energy/vacuum.ts'
import * as vent from '../../src/energy/vent-time.ts'
import { waitOfSource } from '../../src/energy/wait-of-source.ts'
import { isComputed } from '../../src/law/law.ts'

type Inputs = Record<InputName, number | undefined>
const names = Object.keys(inputKinds) as InputName[]

const laws = Object.entries({
  ...accumulator,
  ...capacitor,
  ...oil,
  ...cooling,
  ...peak,
  ...discharge,
  ...steam,
  ...gas,
  ...pressureTest,
  ...load,
  ...rotor,
  ...runDown,
  ...spring,
  ...vacuum,
  ...vent,
  ...oilDischarge,
}).flatMap(([name, it]) => (typeof it === 'function' ? [[name, it as (given: Inputs) => Result] as const] : []))

/** Any numbers at all. */
const anything = fc.record(
  Object.fromEntries(names.map((name) => [name, fc.option(fc.double(), { nil: undefined })])) as Record<InputName, fc.Arbitrary<number | undefined>>,
)

/** Numbers that every law can take, over many orders of size. */
const size = fc.double({ min: -9, max: 9, noNaN: true }).map((power) => 10 ** power)
const possible = fc.record(Object.fromEntries(names.map((name) => [name, size])) as Record<InputName, fc.Arbitrary<number>>).map((given) => ({
  ...given,
  remainingFraction: Math.min(1, given.remainingFraction),
  adiabaticExponent: 1.01 + (given.adiabaticExponent % 1),
  polytropicExponent: 1 + (given.polytropicExponent % 1),
  harmlessK: given.ambientK + given.harmlessK,
  highestPressurePa: given.prechargePa + given.highestPressurePa,
}))

test('there are laws to try', () => expect(laws.length).toBeGreaterThan(25))

describe.each(laws)('%s', (_, law) => {
  test('gives a finite value of zero or more, what is missing, or what is impossible: never NaN or Infinity', () => {
    fc.assert(
      fc.property(anything, (given) => {
        const result = law(given)
        if (isComputed(result)) expect(Number.isFinite(result.value) && result.value >= 0).toBe(true)
        else expect('notComputed' in result ? result.notComputed.length : result.impossible.length).toBeGreaterThan(0)
      }),
    )
  })

  test('names each input that is missing and nothing else', () => {
    const result = law(Object.fromEntries(names.map((name) => [name, undefined])) as Inputs)
    if (!('notComputed' in result)) throw new Error(JSON.stringify(result))
    const [sample] = fc.sample(possible, { numRuns: 1, seed: 1 })
    const full = law({ ...(sample as Inputs), scaledDistance: 20 })
    // A conflict names the inputs of the law too.
    const inputs = isComputed(full) ? full.inputs.map(({ name }) => inputKinds[name].quantity as string) : 'of' in full ? full.of : []
    expect(inputs).toEqual(expect.arrayContaining([...result.notComputed]))
    for (const name of names.filter((it) => result.notComputed.includes(inputKinds[it].quantity))) {
      const without = law({ ...(sample as Inputs), [name]: undefined })
      if ('notComputed' in without) expect(without.notComputed).toEqual([inputKinds[name].quantity])
    }
  })

  test('shows every letter of its inputs in its formula', () => {
    const [sample] = fc.sample(possible, { numRuns: 1, seed: 2 })
    const result = law({
      ...(sample as Inputs),
      startVoltageV: 1000,
      limitVoltageV: 60,
      scaledDistance: 20,
      lowestPressurePa: 1,
      highestPressurePa: 1e12,
      prechargePa: 1e6,
    })
    if (!isComputed(result)) throw new Error(JSON.stringify(result))
    for (const { letter } of result.inputs) expect(result.formula).toContain(letter)
  })
})

describe('more stored energy never gives a shorter wait, nor less energy', () => {
  const kinds: [StoreKind, InputName][] = [
    ['capacitor', 'capacitanceF'],
    ['capacitor', 'startVoltageV'],
    ['capacitor', 'resistanceOhm'],
    ['receiver', 'gaugePressurePa'],
    ['receiver', 'volumeM3'],
    ['accumulator', 'volumeM3'],
    ['accumulator', 'highestPressurePa'],
    ['compressed-liquid', 'gaugePressurePa'],
    ['raised-load', 'massKg'],
    ['raised-load', 'heightM'],
    ['spring', 'deflectionM'],
    ['torsion-spring', 'angleRad'],
    ['rotor', 'momentOfInertiaKgM2'],
    ['rotor', 'speedRadPerS'],
    ['hot-body', 'temperatureK'],
    ['hot-body', 'timeConstantS'],
    ['hot-body', 'ambientK'],
    ['vacuum', 'volumeM3'],
  ]
  const waitOf = (store: Store, waitS: number | undefined) => {
    const wait = waitOfSource({ stored: true, stores: [store], waitS })
    return wait && 'seconds' in wait ? wait.seconds : undefined
  }
  const drag = fc.boolean()
  const statedS = fc.option(fc.integer({ min: 1, max: 10_000 }), { nil: undefined })

  test.each(kinds)('%s: %s', (kind, name) => {
    let compared = 0
    fc.assert(
      fc.property(possible, fc.double({ min: 1, max: 1000, noNaN: true }), drag, statedS, (given, factor, viscous, waitS) => {
        const values = viscous ? given : { ...given, viscousDragNmsPerRad: undefined }
        const less = { kind, given: defined(values) }
        const more = { kind, given: defined({ ...values, [name]: given[name] * factor }) }
        const [energy, moreEnergy] = [energyOfStore(less), energyOfStore(more)]
        if (energy && moreEnergy && isComputed(energy) && isComputed(moreEnergy)) {
          // The last binary digit may round either way.
          expect(moreEnergy.value).toBeGreaterThanOrEqual(energy.value * (1 - 1e-12))
          compared++
        }
        const [exact, longer] = [waitOfStore(less), waitOfStore(more)]
        if (exact && longer && isComputed(exact) && isComputed(longer)) {
          expect(longer.value).toBeGreaterThanOrEqual(exact.value * (1 - 1e-12))
          expect(waitOf(more, waitS) ?? Number.NaN).toBeGreaterThanOrEqual(waitOf(less, waitS) ?? Number.NaN)
          compared++
        }
      }),
    )
    expect(compared).toBeGreaterThan(0)
  })
})

const defined = (given: Inputs) => Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as Store['given']

describe('a waiting time', () => {
  test('is never rounded down, by a minute at most, and keeps the order', () => {
    const seconds = fc.double({ min: 0, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(seconds, seconds, (a, b) => {
        expect(roundedUpS(a)).toBeGreaterThanOrEqual(a)
        expect(roundedUpS(a) - a).toBeLessThanOrEqual(a <= 60 ? 1 : 60)
        if (a <= b) expect(roundedUpS(a)).toBeLessThanOrEqual(roundedUpS(b))
      }),
    )
    expect([0, 4.95, 60, 60.01, 108.54, 120, 4705.8].map(roundedUpS)).toEqual([0, 5, 60, 120, 120, 120, 4740])
  })
})
