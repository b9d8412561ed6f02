import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { capitalShare, leastArcMin, type Panel, panelSizes, pitchMmOf, seenHeightMm } from '../../src/panel/panel-sizes.ts'
import { fonts } from '../../src/site/fonts.ts'
import { capitalShareOf } from './woff2.ts'

const panel = (diagonalInch: number, widthPx: number, heightPx: number, more: Partial<Panel> = {}): Panel => ({
  diagonalMm: diagonalInch * 25.4,
  widthPx,
  heightPx,
  distanceMm: 600,
  touch: 'gloves',
  textArcMin: 20,
  ...more,
})

// Source: ISO 9241-303, h = 2 d tan(a / 2); heights as quoted from ISO 9241-3 in a maker's guide to workplaces.
test.each([
  [600, 16, 2.79],
  [600, 20, 3.49],
  [600, 22, 3.84],
  [1000, 20, 5.82],
])('at %d mm %d minutes of arc are %d mm', (distanceMm, arcMin, heightMm) => {
  expect(seenHeightMm(distanceMm, arcMin)).toBeCloseTo(heightMm, 2)
})

describe('panels that are in trade', () => {
  // Source: the rule above with the pixel pitch of each panel; font sizes with capitals of 0.7 of the font size.
  test.each([
    [7, 800, 480, 27],
    [10.1, 1280, 800, 30],
    [12.1, 1024, 768, 21],
    [15.6, 1920, 1080, 28],
  ])('%d inches with %d × %d: a font of about %d px with capitals of 0.7', (diagonalInch, widthPx, heightPx, fontPx) => {
    const { rootPx } = panelSizes(panel(diagonalInch, widthPx, heightPx))
    expect(Math.abs((rootPx * capitalShare) / 0.7 - fontPx)).toBeLessThan(1)
  })

  test('7 inches with 800 × 480: the pixels, and what is touched', () => {
    const small = panel(7, 800, 480)
    expect(pitchMmOf(small)).toBeCloseTo(0.1906, 4)
    expect(panelSizes(small).targetPx).toBe(79)
    expect(panelSizes({ ...small, touch: 'bare' }).targetPx).toBe(50)
  })

  test('15 inches with 1024 × 768', () => {
    expect(panelSizes(panel(15, 1024, 768))).toMatchObject({ rootPx: 17.56, targetPx: 51, targetMm: 15, smallestShare: 0.8 })
  })
})

test('the share of a capital is that of the font that the site carries', () => {
  for (const name of ['text-400.woff2', 'text-700.woff2']) expect(capitalShareOf(`node_modules/${fonts[name]}`)).toBe(capitalShare)
  // Labels are set in a font with larger capitals, never smaller.
  expect(capitalShareOf(`node_modules/${fonts['label-500.woff2']}`)).toBeGreaterThan(capitalShare)
})

const anyPanel = fc.record({
  diagonalMm: fc.double({ min: 80, max: 1500, noNaN: true }),
  widthPx: fc.integer({ min: 240, max: 4096 }),
  heightPx: fc.integer({ min: 240, max: 4096 }),
  distanceMm: fc.integer({ min: 200, max: 3000 }),
  touch: fc.constantFrom('gloves' as const, 'bare' as const),
  textArcMin: fc.integer({ min: 8, max: 60 }),
})

test('what is rounded to pixels is never smaller than what was asked', () => {
  fc.assert(
    fc.property(anyPanel, (some) => {
      const sizes = panelSizes(some)
      expect(sizes.rootPx * capitalShare * sizes.pitchMm).toBeGreaterThanOrEqual(seenHeightMm(some.distanceMm, some.textArcMin) - 1e-9)
      expect(sizes.targetPx * sizes.pitchMm).toBeGreaterThanOrEqual(sizes.targetMm - 1e-9)
      if (some.textArcMin >= leastArcMin) expect(sizes.smallestShare * some.textArcMin).toBeGreaterThanOrEqual(leastArcMin - 1e-9)
    }),
  )
})

test('farther away is larger, and twice the distance is twice the letters', () => {
  fc.assert(
    fc.property(anyPanel, (some) => {
      expect(panelSizes({ ...some, distanceMm: 2 * some.distanceMm }).capitalMm).toBeCloseTo(2 * panelSizes(some).capitalMm, 9)
    }),
  )
})
