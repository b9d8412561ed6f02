import fc from 'fast-check'
import Quantity from 'js-quantities'
import { describe, expect, test } from 'vitest'
import { converted, unitsOf } from '../../src/model/unit-scale.ts'

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

/** Our units in the spelling of js-quantities; one that is not here is written alike. */
const spelling: Readonly<Record<string, string>> = {
  barg: 'bar',
  psig: 'psi',
  '°C': 'tempC',
  '°F': 'tempF',
  K: 'tempK',
  t: 'tonne',
  '1/min': 'rpm',
  'r/min': 'rpm',
  '°': 'deg',
  'Nm/°': 'N*m/deg',
  'Nm·s/rad': 'N*m*s/rad',
  'Nms/rad': 'N*m*s/rad',
  'kg m²': 'kg*m^2',
  'm³/(s·Pa)': 'm^3/s*Pa',
  'dm³/(s·bar)': 'dm^3/s*bar',
  'l/(s·bar)': 'l/s*bar',
  kgm2: 'kg*m^2',
  'kgm²': 'kg*m^2',
}
const theirs = (unit: string) =>
  spelling[unit] ??
  unit
    .replace(/[µμ]/g, 'u')
    .replace(/([kMm]?)Ω/, '$1ohm')
    .replace(/([kMm]?)Nm/, '$1N*m')
    .replace(/²|(?<=m)2/, '^2')
    .replace(/³|(?<=m)3/, '^3')
    .replaceAll('·', '*')
    .replace(/L/g, 'l')

const oneOfEach = ['bar', 'mm', '°C', 'V', 'mA', 'µF', 'Ω', 'kg', 'N', 'Nm', 'W', 'l', 'J/kg', 'm²', 'kg/m³', 'm³/(s·Pa)', 's', 'l/min', 'm/s', 'Hz']
const others = ['rad/s', 'kg·m²', 'Nm·s/rad', 'rad', 'N/m', 'Nm/rad', 'S/m']

test.each([...oneOfEach, ...others])('js-quantities agrees on every conversion from %s', (unit) => {
  const all = unitsOf(unit)
  expect(all.length).toBeGreaterThan(1)
  for (const other of all)
    for (const value of [1, 37.5, 1200]) {
      const oracle = Quantity(value, theirs(unit)).to(theirs(other)).scalar
      // Its psi is a rounded constant.
      expect(Math.abs((converted(value, unit, other) ?? Number.NaN) - oracle), `${value} ${unit} in ${other}`).toBeLessThanOrEqual(
        1e-6 * Math.abs(oracle),
      )
    }
})
