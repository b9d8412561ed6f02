import { expect, test } from 'vitest'
import { qrCode } from '../../src/print/qr-code.ts'
import { reedSolomon } from '../../src/print/reed-solomon.ts'

test('the check bytes are those of a published example', () => {
  // ISO/IEC 18004, annex I: 01234567 as version 1-M (from memory).
  const data = [0x10, 0x20, 0x0c, 0x56, 0x61, 0x80, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11]
  expect(reedSolomon(data, 10)).toEqual([0xa5, 0x24, 0xd4, 0xc1, 0xed, 0x36, 0xc7, 0x87, 0x2c, 0x55])
})

test.each([
  ['', 21],
  ['A0217', 21],
  ['LO-1', 21],
  ['x'.repeat(14), 21],
  ['x'.repeat(15), 25],
  ['x'.repeat(42), 29],
  ['ñ'.repeat(39), 33],
  ['x'.repeat(106), 37],
])('%s takes the smallest size that holds it', (text, size) => {
  const code = qrCode(text)
  expect([code.length, ...code.map((row) => row.length)]).toEqual(Array.from({ length: size + 1 }, () => size))
})

test('a longer text is refused with its length', () => expect(() => qrCode('x'.repeat(107))).toThrow('this text has 107'))
