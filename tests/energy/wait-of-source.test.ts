import { expect, test } from 'vitest'
import type { Store } from '../../src/energy/store.ts'
import { waitOfSource } from '../../src/energy/wait-of-source.ts'

const bus = (resistanceOhm?: number): Store => ({
  kind: 'capacitor',
  given: { capacitanceF: 2200e-6, startVoltageV: 565, ...(resistanceOhm === undefined ? {} : { resistanceOhm }) },
})
const receiver: Store = { kind: 'receiver', given: { gaugePressurePa: 6e5, volumeM3: 0.05, adiabaticExponent: 1.4 } }

test('nothing stored, nothing to wait for', () => {
  expect(waitOfSource({ stored: false, stores: [], waitS: 300 })).toBeUndefined()
})

test('nothing known of what it stores', () => {
  expect(waitOfSource({ stored: true, stores: [], waitS: undefined })).toEqual({ notComputed: ['store'] })
  expect(waitOfSource({ stored: true, stores: [], waitS: 300 })).toEqual({
    seconds: 300,
    basis: 'stated',
    of: undefined,
    formula: undefined,
    inputs: [],
  })
})

test('what only an act makes harmless', () => {
  expect(waitOfSource({ stored: true, stores: [receiver], waitS: undefined })).toEqual({
    notComputed: ['sonicConductance', 'criticalRatio', 'harmlessAt'],
  })
  expect(waitOfSource({ stored: true, stores: [receiver], waitS: 90 })).toMatchObject({ seconds: 90, basis: 'stated' })
})

test('computed, with formula and inputs, rounded up', () => {
  expect(waitOfSource({ stored: true, stores: [bus(22e3)], waitS: undefined })).toEqual({
    seconds: 120,
    basis: 'computed',
    of: 'capacitor',
    formula: 't = R·C·ln(V₀/V)',
    inputs: [
      { name: 'capacitanceF', letter: 'C', value: 2200e-6, unit: 'F' },
      { name: 'resistanceOhm', letter: 'R', value: 22e3, unit: 'Ω' },
      { name: 'startVoltageV', letter: 'V₀', value: 565, unit: 'V' },
      { name: 'limitVoltageV', letter: 'V', value: 60, unit: 'V' },
    ],
  })
})

test('the longer of the computed and the stated time counts', () => {
  // Computed are 108.54 s. A stated time is compared with that, and not with what it is rounded up to.
  expect(waitOfSource({ stored: true, stores: [bus(22e3)], waitS: 110 })).toMatchObject({
    seconds: 110,
    basis: 'stated',
    formula: 't = R·C·ln(V₀/V)',
  })
  expect(waitOfSource({ stored: true, stores: [bus(22e3)], waitS: 100 })).toMatchObject({ seconds: 120, basis: 'computed' })
})

test('of several stores the slowest counts, and one that cannot be computed hides which it is', () => {
  const both = [bus(11e3), bus(22e3), bus(1e3)]
  expect(waitOfSource({ stored: true, stores: both, waitS: undefined })).toMatchObject({ seconds: 120 })
  expect(waitOfSource({ stored: true, stores: [...both, bus()], waitS: undefined })).toEqual({ notComputed: ['resistance'] })
  expect(waitOfSource({ stored: true, stores: [...both, bus()], waitS: 60 })).toMatchObject({ seconds: 120, basis: 'computed' })
  expect(waitOfSource({ stored: true, stores: [...both, bus()], waitS: 300 })).toMatchObject({ seconds: 300, basis: 'stated' })
})

test('an impossible input is named and never a number', () => {
  const hot: Store = { kind: 'hot-body', given: { temperatureK: 353, ambientK: 313, harmlessK: 313, timeConstantS: 3600 } }
  expect(waitOfSource({ stored: true, stores: [hot], waitS: undefined })).toEqual({
    notComputed: ['temperature', 'ambient', 'harmlessAt', 'timeConstant'],
  })
})

test('a surface has its threshold from ISO 13732-1, a liquid has none', () => {
  const given = { temperatureK: 180 + 273.15, ambientK: 20 + 273.15, timeConstantS: 45 * 60 }
  const wall: Store = { kind: 'hot-body', given, surface: 'ceramic', contactS: 600 }
  expect(waitOfSource({ stored: true, stores: [wall], waitS: undefined })).toMatchObject({ seconds: 79 * 60 })
  expect(waitOfSource({ stored: true, stores: [{ kind: 'hot-body', given }], waitS: undefined })).toEqual({ notComputed: ['harmlessAt'] })
})

test('a charge that is too small for the rule asks for no resistor', () => {
  const small: Store = { kind: 'capacitor', given: { capacitanceF: 0.1e-6, startVoltageV: 565 } }
  expect(waitOfSource({ stored: true, stores: [small], waitS: undefined })).toBeUndefined()
})
