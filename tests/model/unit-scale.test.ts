import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { converted } from '../../src/model/unit-scale.ts'

// NIST SP 811, appendix B.8, and the SI brochure.
describe.each([
  [1, 'bar', 'kPa', 100],
  [1, 'psi', 'bar', 0.0689476],
  [212, '°F', '°C', 100],
  [-40, '°C', '°F', -40],
  [0, '°C', 'K', 273.15],
  [1, 'in', 'mm', 25.4],
  [24, 'V d.c.', 'mV', 24000],
  [1, 'm³/h', 'l/min', 16.66667],
] as const)('%s %s in %s', (value, from, to, expected) => {
  test(`is ${expected}`, () => {
    expect(converted(value, from, to)).toBeCloseTo(expected, 4)
  })
})

test('nothing is converted between quantities, or from a unit that is not compared', () => {
  expect(converted(1, 'bar', 'mm')).toBeUndefined()
  expect(converted(1, '%', 'mm')).toBeUndefined()
  expect(converted(1, '%', '%')).toBe(1)
})

test('there and back is the same value', () => {
  const units = fc.constantFrom('°C', '°F', 'K')
  fc.assert(
    fc.property(fc.integer({ min: -200, max: 2000 }), units, units, (value, from, to) => {
      expect(converted(converted(value, from, to) ?? Number.NaN, to, from)).toBeCloseTo(value, 6)
    }),
  )
})
