import fc from 'fast-check'
import Quantity from 'js-quantities'
import { describe, expect, test } from 'vitest'
import { scaleOf } from '../../src/model/unit-scale.ts'
import { readQuantity } from '../../src/signals/read-quantity.ts'
import { converted, unitOf, units } from '../../src/signals/unit.ts'
import { languagesWithSignalWords, signalWords } from '../../src/signals/words/words.ts'

describe('what a technician types', () => {
  test.each([
    ['12,1 mA', 12.1, 'mA'],
    ['12.1mA', 12.1, 'mA'],
    ['-24 V', -24, 'V'],
    ['−3,5 V DC', -3.5, 'V'],
    ['23.6 Vdc', 23.6, 'V'],
    ['230 V a.c.', 230, 'V'],
    ['131,2 Ω', 131.2, 'Ω'],
    ['4.7 kohm', 4.7, 'kΩ'],
    ['4,7\u00a0k\u2126', 4.7, 'kΩ'],
    ['0.9 Mohm', 0.9, 'MΩ'],
    ['20 ºC', 20, '°C'],
    ['20 degC', 20, '°C'],
    ['72 °F', 72, '°F'],
    ['1455 rpm', 1455, 'min⁻¹'],
    ['1455 1/min', 1455, 'min⁻¹'],
    ['6 bar (g)', 6, 'bar'],
    ['5 uA', 5, 'µA'],
    ['20 L/min', 20, 'l/min'],
    ['3 m3/h', 3, 'm³/h'],
    ['1e3 Ω', 1000, 'Ω'],
    ['.5 mm', 0.5, 'mm'],
    ['1,234 V', 1.234, 'V'],
    ['10 N·m', 10, 'Nm'],
  ])('%s', (text, value, unit) => expect(readQuantity(text)).toMatchObject({ value, unit, typed: { value, unit } }))

  test.each([
    ['', { unread: 'empty' }],
    ['  ', { unread: 'empty' }],
    ['mA', { unread: 'no-number' }],
    ['about 12 mA', { unread: 'no-number' }],
    ['12', { unread: 'no-unit' }],
    ['1.234,5 V', { unread: 'not-one-number' }],
    ['1 234 Ω', { unread: 'not-one-number' }],
    ["1'234 Ω", { unread: 'not-one-number' }],
    ['12 ma', { unread: 'unknown-unit', unit: 'ma', perhaps: ['mA'] }],
    ['12 furlong', { unread: 'unknown-unit', unit: 'furlong' }],
    ['1e999 V', { unread: 'no-number' }],
  ])('%j is refused', (text, expected) => expect(readQuantity(text)).toEqual(expected))

  test('into the unit that is wanted, and refused where it measures something else', () => {
    expect(readQuantity('0,0121 A', 'mA')).toEqual({
      value: expect.closeTo(12.1, 9),
      unit: 'mA',
      dimension: 'current',
      typed: { value: 0.0121, unit: 'A' },
    })
    expect(readQuantity('12.1 V', 'mA')).toEqual({ unread: 'wrong-dimension', unit: 'V' })
    expect(readQuantity('12.1 mA', 'nonsense')).toEqual({ unread: 'wrong-dimension', unit: 'mA' })
  })

  test('any text gives a finite value or a reason, never a throw', () => {
    const near = fc.stringMatching(/^[-+−]?[0-9.,eE' ]{0,8}[ ]?[mkµ]?(V|A|Ω|Hz|°C|bar|x)?$/u)
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'grapheme' }), near), (text) => {
        const read = readQuantity(text)
        if ('value' in read) expect(Number.isFinite(read.value)).toBe(true)
        else expect(read.unread.length).toBeGreaterThan(0)
      }),
      { numRuns: 2000 },
    )
  })

  test('each reason has its words in every language', () => {
    const reasons = ['empty', 'no-number', 'not-one-number', 'no-unit', 'unknown-unit', 'wrong-dimension'] as const
    for (const language of languagesWithSignalWords) for (const reason of reasons) expect(signalWords(language)?.unread[reason]).toMatch(/\.$/)
  })
})

function inUnit(value: number, from: string, to: string): number {
  const [one, other] = [unitOf(from), unitOf(to)]
  return (one && other && converted(value, one, other)) ?? Number.NaN
}

// Source: exact definitions.
test.each([
  ['UC-01', 100, 'psi', 'bar', 6.894757, 1e-5 * 6.894757],
  ['UC-02', 72, '°F', '°C', 22.2222, 5e-5],
  ['UC-03', 10, 'Nm', 'ft·lbf', 7.37562, 1e-5 * 7.37562],
  ['UC-04', 1, 'gal/min', 'l/min', 3.785412, 1e-5 * 3.785412],
])('%s: %d %s in %s', (_, value, from, to, expected, tolerance) =>
  expect(Math.abs(inUnit(value, from, to) - expected)).toBeLessThanOrEqual(tolerance),
)

/** Our symbols in the spelling of js-quantities. */
const spelling: Readonly<Record<string, string>> = {
  '°C': 'tempC',
  '°F': 'tempF',
  K: 'tempK',
  Ω: 'ohm',
  kΩ: 'kohm',
  MΩ: 'Mohm',
  GΩ: 'Gohm',
  mΩ: 'mohm',
  'mm²': 'mm^2',
  'cm²': 'cm^2',
  'min⁻¹': 'rpm',
  'm³/h': 'm^3/h',
  'm³': 'm^3',
  Nm: 'N*m',
  kNm: 'kN*m',
  ft·lbf: 'ft*lbf',
  t: 'tonne',
  '°': 'deg',
  inc: 'each',
}

describe('js-quantities agrees', () => {
  const first = new Map(units.map((unit) => [unit.dimension, unit]))
  for (const unit of [...units].reverse()) first.set(unit.dimension, unit)
  const oracle = (symbol: string) => spelling[symbol] ?? symbol.replace('µ', 'u')
  test.each(units.map((unit) => [unit.symbol, unit] as const))('on %s', (symbol, unit) => {
    const base = first.get(unit.dimension)
    if (!base) throw new Error('no base')
    for (const value of [1, 37.5, 1200]) {
      const theirs = Quantity(value, oracle(symbol)).to(oracle(base.symbol)).scalar
      const ours = converted(value, unit, base) ?? Number.NaN
      // Its psi and its inch of mercury are rounded constants.
      expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(theirs)))
      expect(converted(ours, base, unit)).toBeCloseTo(value, 6)
    }
  })
})

test('the scales that the check knows are the same, and the dimensions no others', () => {
  const both = units.flatMap((unit) => {
    const other = scaleOf(unit.symbol)
    return other ? [[unit, other] as const] : []
  })
  expect(both.length).toBeGreaterThan(40)
  for (const [unit, { quantity }] of both) {
    const partner = both.find(([other]) => other.dimension === unit.dimension)
    if (!partner) throw new Error(unit.symbol)
    expect(quantity).toBe(partner[1].quantity)
    const [own, other] = [partner[0], partner[1]]
    const scale = scaleOf(unit.symbol)
    if (!scale) throw new Error(unit.symbol)
    const theirs = (5 * scale.factor + scale.offset - other.offset) / other.factor
    expect(Math.abs((converted(5, unit, own) ?? Number.NaN) - theirs)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(theirs)))
  }
})
