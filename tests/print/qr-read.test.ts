import jsqr from 'jsqr'
import { expect, test } from 'vitest'
import { type QrCode, qrCode } from '../../src/print/qr-code.ts'

const modulePx = 4
const quietModules = 4

/** The code as a camera would see it: RGBA, black on white, with its light border. */
function pictureOf(code: QrCode): { rgba: Uint8ClampedArray; sidePx: number } {
  const sidePx = (code.length + 2 * quietModules) * modulePx
  const rgba = new Uint8ClampedArray(sidePx * sidePx * 4).fill(255)
  for (let y = 0; y < sidePx; y++)
    for (let x = 0; x < sidePx; x++)
      if (code[Math.floor(y / modulePx) - quietModules]?.[Math.floor(x / modulePx) - quietModules])
        rgba.fill(0, (y * sidePx + x) * 4, (y * sidePx + x) * 4 + 3)
  return { rgba, sidePx }
}

// jsQR imports as a namespace in Node and as a function elsewhere.
const read = (typeof jsqr === 'function' ? jsqr : (jsqr as { default: typeof import('jsqr').default }).default) as typeof import('jsqr').default

const lengths = Array.from({ length: 106 }, (_, index) => 'Zx7-'.repeat(27).slice(0, index + 1))

test.each(['LO-1', 'A0217', '=A1+B2-K3', 'ñandú, 4–20 mA', ...lengths])('another reader reads %s', (text) => {
  const { rgba, sidePx } = pictureOf(qrCode(text))
  const found = read(rgba, sidePx, sidePx)
  expect(Buffer.from(found?.binaryData ?? []).toString('utf8')).toBe(text)
})
