import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { advice, suggestFrom } from '../../src/check/suggest.ts'

const known = ['PS-101', 'PS-102', 'PS-111', 'PS-1O1X', 'TS-101', 'TS-0101', 'A1']

test.each([
  ['ps_0101', { same: 'PS-101', near: [] }],
  ['PS-1O1', { same: 'PS-101', near: [] }],
  ['PS\u2013101', { same: 'PS-101', near: [] }],
  // Two names are the same but for their spelling: neither is certain.
  ['TS 101', { near: ['TS-0101', 'TS-101'] }],
  ['PS-103', { near: ['PS-101', 'PS-102', 'PS-111'] }],
  ['PS-011', { near: ['PS-101', 'PS-111', 'PS-102'] }],
  ['XX-999', { near: [] }],
  ['', { near: [] }],
  ['PS-101 is a pressure switch', { near: [] }],
  // One slip in a short name, two in a longer one.
  ['A2', { near: ['A1'] }],
  ['B2', { near: [] }],
])('%s', (written, expected) => expect(suggestFrom(known)(written)).toEqual(expected))

test.each([
  ['ps-111', 'write `PS-111`: it differs only in spelling'],
  ['A2', 'the nearest tag is `A1`: check the drawing'],
  ['PS-112', 'the nearest tags are `PS-102`, `PS-111`, `PS-101`: check the drawing'],
  ['XX-999', 'add it'],
])('advice for %s', (written, expected) => expect(advice(suggestFrom(known)(written), 'tag', 'add it', 'check the drawing')).toBe(expected))

describe('any names', () => {
  const tag = fc.stringMatching(/^[A-Z]{1,3}-[1-9][0-9]{0,2}$/)

  test('a tag is known again when only its spelling differs', () => {
    fc.assert(
      fc.property(fc.uniqueArray(tag, { minLength: 1 }), fc.nat(), (tags, n) => {
        const one = tags[n % tags.length] ?? ''
        expect(suggestFrom(tags)(one.toLowerCase().replace('-', '_0'))).toEqual({ same: one, near: [] })
      }),
    )
  })

  test('their order does not matter', () => {
    fc.assert(
      fc.property(fc.array(tag), tag, (tags, name) => {
        expect(suggestFrom(tags)(name)).toEqual(suggestFrom(tags.toReversed())(name))
      }),
    )
  })

  test('at most three, all of them known, and none beside a certain one', () => {
    fc.assert(
      fc.property(fc.array(tag), tag, (tags, name) => {
        const { same, near } = suggestFrom(tags)(name)
        expect(near.length).toBeLessThanOrEqual(same === undefined ? 3 : 0)
        for (const it of near) expect(tags).toContain(it)
      }),
    )
  })
})
