import { expect, test } from 'vitest'
import { isUnit, unitMeant } from '../../src/model/unit-of-measure.ts'

test.each([
  ['bar', 'mbar', 'bar (g)', 'barg', 'psi', 'kPa', 'mPa·s'],
  ['mm', 'µm', 'm²', 'm3/h', 'l/min', 'kg·m²', 'N·m', 'Nm', 'm/s2', 'mS/cm'],
  ['V', 'V d.c.', 'V c.c.', 'V AC', 'VDC', 'mA', 'Ω', 'kΩ', 'kVA', 'Ah', 'µF'],
  ['°C', '°F', 'K', '%', 'pH', 'ppm', 'dB(A)', '1/min', 'min-1', 'min⁻¹', 'rpm', 'Hz'],
  ['pcs', 'set', 'pair', 'roll', 'l', 'kg', 'crates/min', 'pulses/rev'],
])('%s and others are units', (...units) => {
  expect(units.filter((unit) => !isUnit(unit))).toEqual([])
})

test.each([
  ['Bar', 'bar'],
  ['degC', '°C'],
  ['deg C', '°C'],
  ['C', '°C'],
  ['KG', 'kg'],
  ['MBAR', 'mbar'],
  ['sec', 's'],
  ['hz', 'Hz'],
  ['mhz', 'MHz'],
  ['mpa', undefined],
  ['foo bar', undefined],
  ['crates', undefined],
  ['', undefined],
  ['12', undefined],
])('`%s` is none, and `%s` is meant', (text, meant) => {
  expect(isUnit(text)).toBe(false)
  expect(unitMeant(text)).toBe(meant)
})
