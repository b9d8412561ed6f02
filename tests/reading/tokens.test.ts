import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sentenceLengthWords } from '../../src/reading/sentence-length.ts'
import { sentencesOf } from '../../src/reading/sentences.ts'
import { tokensOf } from '../../src/reading/tokens.ts'

/** A sentence, its words for the limit of its length, its words for the formulas. The first five: ASD-STE100 Issue 9 rule 5.1, published counts. */
const counted: [string, number, number][] = [
  ['Install the three auxiliary screws (2) in the flange of the motor assembly (9).', 14, 14],
  ['WHEN YOU REMOVE THE SHROUD (26), BE CAREFUL NOT TO CAUSE DAMAGE TO THE SURFACE OF THE FLANGE ASSEMBLY (22).', 20, 20],
  ['Put preservation oil into the unit through the vent hole.', 10, 10],
  ['Continue until the oil level is approximately 6 mm (0.24 in) below the surface of the flange cover.', 16, 16],
  [
    'Put preservation oil into the unit through the vent hole until the oil level is approximately 6 mm (0.24 inches) below the surface of the flange cover.',
    25,
    26,
  ],
  ['Set the pressure at V12 to 6 bar.', 7, 7],
  ['If PX-104 shows more than 24 V DC, set switch -B12 to OFF.', 11, 11],
  ['Let the oil cool to 40 °C (approx. 20 min).', 7, 8],
  ['Use part no. 4711-08.', 4, 4],
  ['Install the O-ring on the quick-release coupling.', 7, 7],
  ['Turn the selector switch to "JOG MODE".', 6, 7],
  ['Do not touch the plate; it is hot.', 8, 8],
  ['The gap is 0.2 mm and the ratio is 3:1.', 9, 9],
  ['Use a 1/2 in. hose.', 4, 4],
  ['See steps 3–5.', 3, 3],
  ['The load is 1,450 kg at 50 Hz.', 6, 6],
  ['Pressure: 4...20 mA signal.', 3, 3],
  ['Use bolt M8 × 25 (qty. 4).', 5, 6],
]

const sentenceOf = (text: string) => {
  const sentences = sentencesOf({ kind: 'paragraph', text }, 'en')
  expect(sentences).toHaveLength(1)
  return sentences[0] as (typeof sentences)[number]
}

test.each(counted)('%s', (text, length, words) => {
  const sentence = sentenceOf(text)
  expect({ length: sentenceLengthWords(sentence), words: sentence.tokens.length }).toEqual({ length, words })
})

test('a sentence that stands in parentheses counts its words', () => {
  expect(sentenceLengthWords(sentenceOf('(Do not use grease.)'))).toBe(4)
})

const kinds = (text: string) => tokensOf(text).map(({ text: token, kind }) => (kind === 'word' ? token : `${token}=${kind}`))

describe('what is no ordinary word', () => {
  test.each([
    ['M8 x 25 and M8 × 25, axis x', ['M8=identifier', '25=number', 'and', 'M8=identifier', '25=number', 'axis', 'x=identifier']],
    ['78 dB(A) on a 24 V c.c.', ['78 dB(A=measure', 'on', 'a', '24 V c.c=measure']],
    [
      'Set it to 24 V DC, 24VDC, 24 V d.c. or 230 V AC.',
      ['Set', 'it', 'to', '24 V DC=measure', '24VDC=measure', '24 V d.c=measure', 'or', '230 V AC=measure'],
    ],
    ['at 82 °C, 82 deg. C, 5 %, 70 vol. %, 30°', ['at', '82 °C=measure', '82 deg. C=measure', '5 %=measure', '70 vol. %=measure', '30°=measure']],
    [
      'to 45 N·m, 45 N m, 3 mm/s, 10 m³/h, 5 1/min',
      ['to', '45 N·m=measure', '45 N m=measure', '3 mm/s=measure', '10 m³/h=measure', '5 1/min=measure'],
    ],
    ['1,450 rev./min. at −5 °C', ['1,450 rev./min=measure', 'at', '−5 °C=measure']],
    ['4 to 20 mA, 4…20 mA, 4...20 mA, 1 1/2 in.', ['4=number', 'to', '20 mA=measure', '4…20 mA=measure', '4...20 mA=measure', '1 1/2 in=measure']],
    ['turn it to 4 in the menu', ['turn', 'it', 'to', '4=number', 'in', 'the', 'menu']],
    ['wait 30 minutes or 500 hours', ['wait', '30=number', 'minutes', 'or', '500=number', 'hours']],
    ['=A1+K3, -B12, X1.3, M8, PX-104', ['=A1+K3=identifier', '-B12=identifier', 'X1.3=identifier', 'M8=identifier', 'PX-104=identifier']],
    ['4711-08 of 2.4.1 in config.json', ['4711-08=number', 'of', '2.4.1=number', 'in', 'config.json=identifier']],
    [
      'the PLC and VFDs, e.g. the HMI, i.e. I/O',
      ['the', 'PLC=abbreviation', 'and', 'VFDs=abbreviation', 'e.g=abbreviation', 'the', 'HMI=abbreviation', 'i.e=abbreviation', 'I/O=abbreviation'],
    ],
    ['z. B. ein Ventil', ['z. B=abbreviation', 'ein', 'Ventil']],
    ['no. 7, approx. half', ['no=abbreviation', '7=number', 'approx=abbreviation', 'half']],
    ['the answer is no.', ['the', 'answer', 'is', 'no']],
    ['a 3-phase O-ring in the IP54-rated box', ['a', '3-phase', 'O-ring', 'in', 'the', 'IP54-rated', 'box']],
    ['OFF, MAX, JOG and the STOP', ['OFF', 'MAX', 'JOG', 'and', 'the', 'STOP']],
    ['the 2nd pump', ['the', '2nd=number', 'pump']],
  ])('%s', (text, expected) => expect(kinds(text)).toEqual(expected))
})

test.each([
  'Go to www.example.com or https://example.com/a?b=c now',
  `Go to https://example.com/${'a'.repeat(100)} or C:\\${'b'.repeat(100)} now`,
  'Go to C:\\Data\\main.prg or /etc/hosts now',
  'Go to me@example.com or docs/a/b.md now',
])('leaves out addresses and paths: %s', (text) => expect(kinds(text)).toEqual(['Go', 'to', 'or', 'now']))

test.each([
  ['a soft hyphen', 'the tem\u00ADperature is high', 'the temperature is high'],
  ['a space that does not break', 'set 24\u00A0VDC and 5\u202F%', 'set 24 VDC and 5 %'],
  ['a thin space in a number', 'a load of 1\u2009450 kg', 'a load of 1450 kg'],
  ['curly quotes', 'press “JOG” on the pump’s panel', 'press "JOG" on the pump\'s panel'],
  ['a dash', 'the pump—the big one – runs', 'the pump the big one runs'],
  ['capitals', 'WHEN YOU REMOVE THE SHROUD, BE CAREFUL', 'when you remove the shroud, be careful'],
  ['marks of emphasis', 'do *not* touch _it_', 'do not touch it'],
])('%s changes no count', (_, text, plain) => {
  expect(tokensOf(text).map((token) => token.kind)).toEqual(tokensOf(plain).map((token) => token.kind))
})

test('a soft hyphen is no part of the text of a word', () => {
  expect(tokensOf('tem\u00ADperature')).toEqual([{ start: 0, end: 12, text: 'temperature', kind: 'word' }])
})

test('reads a part of a text, with places in the whole', () => {
  expect(tokensOf('Stop. Open V12. Go', 6, 15)).toEqual([
    { start: 6, end: 10, text: 'Open', kind: 'word' },
    { start: 11, end: 14, text: 'V12', kind: 'identifier' },
  ])
})

test.each([
  ['a', '.', 'a'],
  ['1', '.', '1'],
  ['', 'ab', ''],
  ['', '(', ''],
  ['', 'a.', ''],
  ['', '4 ', ''],
  ['x', '-', 'x'],
  ['', 'etc. ', ''],
])('takes a long text apart in time: %s%s…%s', (before, middle, after) => {
  const text = before + middle.repeat(100_000) + after
  const start = process.cpuUsage()
  sentencesOf({ kind: 'paragraph', text }, 'en')
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(3)
})

describe('any text at all', () => {
  const texts = fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc
      .array(fc.constantFrom('4', '1/2', 'in', 'in.', '%', 'V', 'DC,', '(a)', '—', '-B1', '\u00A0', '"x."', 'e.g.'), { maxLength: 12 })
      .map((parts) => parts.join(' ')),
  )
  test('gives words in order, inside the text, each with a letter or digit', () => {
    fc.assert(
      fc.property(texts, (text) => {
        let from = 0
        for (const token of tokensOf(text)) {
          expect(token.start).toBeGreaterThanOrEqual(from)
          expect(token.end).toBeGreaterThan(token.start)
          expect(token.text).toMatch(/[\p{L}\p{N}]/u)
          from = token.end
        }
        expect(from).toBeLessThanOrEqual(text.length)
      }),
      { numRuns: 2000 },
    )
  })
})
