import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonicalJson, type Json } from '../../src/training/canonical-json.ts'

test('the worked example of RFC 8785, 3.2.3: members in the order of UTF-16 code units', () => {
  const value = {
    '\u20ac': 'Euro Sign',
    '\r': 'Carriage Return',
    '\ufb33': 'Hebrew Letter Dalet With Dagesh',
    '1': 'One',
    '\ud83d\ude00': 'Emoji: Grinning Face',
    '\u0080': 'Control',
    '\u00f6': 'Latin Small Letter O With Diaeresis',
  }
  const order = ['Carriage Return', 'One', 'Control', 'Latin', 'Euro', 'Emoji', 'Hebrew']
  const text = canonicalJson(value)
  expect(order.map((word) => text.indexOf(word))).toEqual(order.map((word) => text.indexOf(word)).sort((a, b) => a - b))
  expect(text).not.toContain('-1')
})

// RFC 8785, 3.2.2 and appendix B.
test.each<[Json, string]>([
  [
    {
      numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
      string: '\u20ac$\u000f\nA\'B"\\\\"/',
      literals: [null, true, false],
    },
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  ],
  [-0, '0'],
  [Number('9007199254740992'), '9007199254740992'],
  [Number('295147905179352830000'), '295147905179352830000'],
  [{ b: undefined, a: {} }, '{"a":{}}'],
])('%j', (value, expected) => expect(canonicalJson(value)).toBe(expected))

test.each<[string, Json]>([
  ['not a number', Number.NaN],
  ['without end', [Number.POSITIVE_INFINITY]],
  ['half a pair', { name: '\ud800' }],
  ['half a pair as a name', { '\udc00': 1 }],
])('%s has no JSON', (_, value) => expect(() => canonicalJson(value)).toThrow(RangeError))

describe('laws', () => {
  // Values that are equal as JSON; JSON itself writes -0 as 0.
  const value = fc.jsonValue({ noUnicodeString: false }).filter((it) => !/\\ud[89a-f]/i.test(JSON.stringify(it)))

  test('read again it is the same value, and the same text', () => {
    fc.assert(
      fc.property(value, (it) => {
        const text = canonicalJson(it as Json)
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(it)))
        expect(canonicalJson(JSON.parse(text))).toBe(text)
      }),
    )
  })

  test('the order in which members were written does not count', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.integer()), (it) => {
        expect(canonicalJson(Object.fromEntries(Object.entries(it).reverse()))).toBe(canonicalJson(it))
      }),
    )
  })
})
