import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contrastRatio, leastContrast } from '../../src/hazard/contrast.ts'
import { type MessageForm, panelOf } from '../../src/hazard/panel.ts'
import { inOrderOfHarm } from '../../src/hazard/signal-word.ts'

// Source: WCAG 2.2; the first four are published examples, the others follow from the formula.
test.each([
  ['#000000', '#FFFFFF', 21, 0.005],
  ['#0000FF', '#FFFFFF', 8.59, 0.005],
  ['#0000FF', '#FF0000', 2.15, 0.005],
  ['#E5E5E5', '#AABB00', 1.6981, 0.0005],
  ['#C8102E', '#FFFFFF', 5.88, 0.01],
  ['#FF8200', '#000000', 8.45, 0.01],
  ['#FF8200', '#FFFFFF', 2.49, 0.01],
  ['#FFD100', '#000000', 14.37, 0.01],
  ['#FFD100', '#FFFFFF', 1.46, 0.01],
  ['#0072CE', '#FFFFFF', 4.89, 0.01],
  ['#9B2423', '#FFFFFF', 7.86, 0.01],
  ['#D05D29', '#2B2B2C', 3.56, 0.01],
  ['#D05D29', '#000000', 5.28, 0.01],
  ['#F9A800', '#000000', 10.63, 0.01],
  ['#FF0000', '#FFFFFF', 4, 0.01],
])('%s on %s: %d', (a, b, expected, tolerance) => expect(Math.abs(contrastRatio(a, b) - expected)).toBeLessThanOrEqual(tolerance))

test('the order of the colours does not matter, and the ratio lies between 1 and 21', () => {
  const colour = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`)
  fc.assert(
    fc.property(colour, colour, (a, b) => {
      expect(contrastRatio(a, b)).toBe(contrastRatio(b, a))
      expect(contrastRatio(a, b)).toBeGreaterThanOrEqual(1)
      expect(contrastRatio(a, b)).toBeLessThanOrEqual(21)
    }),
  )
})

test('what is no colour has no contrast', () => expect(() => contrastRatio('#fff', 'white')).toThrow(RangeError))

describe.each<MessageForm>(['z535', 'iso-3864-2'])('%s', (form) => {
  test.each(inOrderOfHarm)('%s: letters on their ground, and the alert symbol on the ground', (word) => {
    const { ground, letters, alert } = panelOf(word, form)
    expect(contrastRatio(ground, letters)).toBeGreaterThanOrEqual(leastContrast.text)
    if (!alert) return
    expect(contrastRatio(alert.triangle, alert.mark)).toBeGreaterThanOrEqual(leastContrast.text)
    // The triangle is seen by its ground or by its border.
    expect(Math.max(contrastRatio(alert.triangle, ground), contrastRatio(alert.border, ground))).toBeGreaterThanOrEqual(leastContrast.largeText)
  })

  test('the alert symbol stands with every word of injury, and never with NOTICE', () => {
    expect(inOrderOfHarm.filter((word) => panelOf(word, form).alert)).toEqual(['danger', 'warning', 'caution'])
  })

  test('the panels differ', () => expect(new Set(inOrderOfHarm.map((word) => panelOf(word, form).ground)).size).toBe(4))
})
