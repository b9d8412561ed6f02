import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { signKindOf } from '../../src/hazard/safety-sign.ts'
import { drawnSigns, signColours, signDrawing, triangle } from '../../src/site/signs/sign-drawing.ts'
import { signMeaning } from '../../src/site/words/sign-meanings.ts'

const side = 400

/** How many pixels of a drawing have each colour of the signs, by the nearest; and how many the whole sign takes. */
async function shares(code: string) {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" width="${side}" height="${side}">${signDrawing(code)}</svg>`
  const pixels = await sharp(Buffer.from(svg)).ensureAlpha().raw().toBuffer()
  const colours = Object.entries(signColours).map(([name, hex]) => ({ name, rgb: [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) }))
  const found: Record<string, number> = {}
  let all = 0
  const at = (x: number, y: number) => {
    const start = (y * side + x) * 4
    if ((pixels[start + 3] ?? 0) < 128) return undefined
    const distance = (rgb: number[]) => rgb.reduce((sum, value, n) => sum + (value - (pixels[start + n] ?? 0)) ** 2, 0)
    return colours.toSorted((a, b) => distance(a.rgb) - distance(b.rgb))[0]?.name
  }
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const name = at(x, y)
      if (name === undefined) continue
      all++
      found[name] = (found[name] ?? 0) + 1
    }
  return {
    share: (name: string) => (found[name] ?? 0) / all,
    all: all / side ** 2,
    at: (x: number, y: number) => at((x * side) / 100, (y * side) / 100),
  }
}

// Shares of the safety colour: ISO 3864-1, from memory (warning and mandatory 50 %, prohibition 35 % of the sign).
const least = { warning: ['yellow', 0.5], mandatory: ['blue', 0.5], prohibition: ['red', 0.35] } as const

describe.each(drawnSigns)('%s', (code) => {
  const kind = signKindOf(code)

  test('has its safety colour on enough of its area, and a pictogram', async () => {
    if (kind === undefined || !Object.hasOwn(least, kind)) throw new Error(`no share for ${kind}`)
    const [colour, share] = least[kind as keyof typeof least]
    const { share: of, all } = await shares(code)
    expect(of(colour)).toBeGreaterThanOrEqual(share)
    expect(of(kind === 'mandatory' ? 'white' : 'black')).toBeGreaterThan(kind === 'warning' ? 0.3 : 0.04)
    // A disc of 48 or a triangle of 96, and nothing outside them.
    expect(Math.abs(all - (kind === 'warning' ? (96 * 83.14) / 20_000 : (Math.PI * 48 ** 2) / 10_000))).toBeLessThan(0.005)
  })

  test('has its meaning in Spanish', () => expect(signMeaning(code, 'es').language).toBe('es'))
})

test.each(Object.values(triangle))('the triangle %s has three equal sides', (points) => {
  const corners = points.split(' ').map((pair) => pair.split(',').map(Number))
  const sides = corners.map(([x = 0, y = 0], n) => {
    const [otherX = 0, otherY = 0] = corners[(n + 1) % 3] ?? []
    return Math.hypot(x - otherX, y - otherY)
  })
  expect(Math.max(...sides) - Math.min(...sides)).toBeLessThan(0.02)
})

test('the bar of a prohibition runs at 45° from the upper left to the lower right', async () => {
  const { at } = await shares('P010')
  for (let x = 22; x <= 78; x += 4) expect([x, at(x, x)]).toEqual([x, 'red'])
  // Along the other diagonal only the middle is of the bar.
  for (const x of [25, 30, 35, 65, 70]) expect(at(x, 100 - x)).not.toBe('red')
})

test('a code without a drawing is told by its meaning', () => {
  expect(signDrawing('M069')).toBeUndefined()
  expect(signMeaning('M069', 'es')).toEqual({ text: 'tether tools', language: 'en' })
  expect(() => signMeaning('W999', 'en')).toThrow('no sign')
})
