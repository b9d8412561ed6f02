import { expect, test } from 'vitest'
import { meaningOf, signCodes, signKindOf } from '../../src/hazard/safety-sign.ts'

// Source: ISO 7010, names from a public list of all registered signs. The pairs are those that are taken for each other.
test.each([
  ['W012', 'electricity', 'warning'],
  ['W017', 'hot surface', 'warning'],
  ['W018', 'automatic start-up', 'warning'],
  ['W019', 'crushing', 'warning'],
  ['W024', 'crushing of hands', 'warning'],
  ['W025', 'counter-rotating rollers', 'warning'],
  ['P010', 'do not touch', 'prohibition'],
  ['P013', 'no activated mobile phone', 'prohibition'],
  ['M002', 'refer to instruction manual', 'mandatory'],
  ['M021', 'disconnect before maintenance or repair', 'mandatory'],
  ['M028', 'keep locked', 'mandatory'],
] as const)('%s: %s', (code, meaning, kind) => {
  expect(meaningOf(code)).toBe(meaning)
  expect(signKindOf(code)).toBe(kind)
})

test.each(['W999', 'w012', 'W12', '', 'toString'])('%s is no code', (code) => {
  expect(meaningOf(code)).toBeUndefined()
  expect(signKindOf(code)).toBeUndefined()
})

test('each code has a meaning of its own', () => {
  expect(new Set(signCodes.map(meaningOf)).size).toBe(signCodes.length)
  for (const code of signCodes) expect(code).toMatch(/^[EFMPW]\d{3}$/)
})
