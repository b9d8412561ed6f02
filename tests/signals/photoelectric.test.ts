import { describe, expect, test } from 'vitest'
import type { Result } from '../../src/law/law.ts'
import {
  excessGain,
  gainForSoiledLenses,
  gainOnTarget,
  highestObjectRate,
  leastObjectLength,
  neededGain,
  photoelectricOutput,
  usableRange,
  whiteReflectance,
} from '../../src/signals/photoelectric.ts'
import { expectValue, valueIn } from './expect-value.ts'

// Source: inverse square of the distance; guideline gains, the first found, the others from memory.
describe('excess gain', () => {
  test('PE-01: a through-beam of 10 m at 2 m', () => {
    expect(valueIn(excessGain('through-beam', { ratedRangeM: 10, rangeM: 2 }) as Result)).toBe(25)
  })

  test('PE-02: range for a gain', () => {
    const rangesMm = Object.values(neededGain).map((gain) => 1000 * valueIn(usableRange({ ratedRangeM: 10, excessGain: gain })))
    for (const [index, expected] of [8165, 4472, 3162, 1414].entries()) expect(Math.abs((rangesMm[index] ?? 0) - expected)).toBeLessThan(1)
  })

  test('PE-03: two lenses that let 70 % through', () => {
    expectValue(gainForSoiledLenses({ firstTransmission: 0.7, secondTransmission: 0.7 }), 2.041, 0.001)
    expect(gainForSoiledLenses({ firstTransmission: 1.1, secondTransmission: 0.7 })).toHaveProperty('impossible')
    expect(valueIn(gainForSoiledLenses({ firstTransmission: 1, secondTransmission: 1 }))).toBe(1)
  })

  test('PE-04: a diffuse sensor on 18 % grey', () => {
    expectValue(gainOnTarget({ excessGain: 12, reflectance: 0.18, referenceReflectance: whiteReflectance }), 2.4, 0.01)
  })
})

// Source: time times speed.
test('PE-05, PE-06, PE-07: object length and rate', () => {
  const object = { objectSpeedMPerS: 1.5, responseMs: 1, beamWidthMm: 3 }
  expectValue(leastObjectLength({ ...object, filterMs: 0, scanMs: 0 }), 4.5, 0.01)
  expectValue(leastObjectLength({ ...object, filterMs: 3, scanMs: 10 }), 24, 0.01)
  expect(leastObjectLength({ ...object, filterMs: 3 })).toEqual({ notComputed: ['scan'] })
  expect(valueIn(highestObjectRate({ onMs: 0.5, offMs: 0.5 }))).toBe(1000)
  expect(valueIn(highestObjectRate({ onMs: 1, offMs: 3 }))).toBe(250)
})

// Source: definition of light operate: on with light.
test('PE-08: light and dark operate', () => {
  const states = [
    photoelectricOutput('through-beam', 'light', true),
    photoelectricOutput('through-beam', 'dark', true),
    photoelectricOutput('retro-reflective', 'dark', false),
    photoelectricOutput('diffuse', 'light', true),
    photoelectricOutput('diffuse', 'dark', true),
  ]
  expect(states).toEqual(['off', 'on', 'off', 'on', 'off'])
})
