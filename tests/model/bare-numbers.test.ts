import { expect, test } from 'vitest'
import { type NumberedKind, numberReader } from '../../src/model/prose/number-reader.ts'
import { tradeWords } from './trade-words.ts'

const read = (numbers: Readonly<Record<NumberedKind, readonly string[]>>) =>
  numberReader({ drawing: new Set(numbers.drawing), part: new Set(numbers.part), alarm: new Set(numbers.alarm) }, new Set())

const machine = read({ drawing: ['E-104', 'E-105', '2117'], part: ['4410-0011', '4410-0012', '991'], alarm: ['A0101', '17', '205'] })
const found = (text: string) => machine(text).map(({ known, kinds, written }) => `${known ? 'known' : 'unknown'} ${kinds.join('+')} ${written}`)

test.each([
  ['See E-104, (E-109) and "E-104/2".', ['known drawing E-104', 'unknown drawing E-109', 'known drawing E-104']],
  ['Drawing 2117, drawing 2118; drawing no. 2119.', ['known drawing 2117', 'unknown drawing 2118', 'unknown drawing 2119']],
  ['Alarms 205, 206 and 207.', ['known alarm 205', 'unknown alarm 206', 'unknown alarm 207']],
  ['Alarm 205 s after the start; alarm 230 V; alarm 17 times; 2117 and 205 alone.', []],
  ['Order 4410-0011, not 4410-0099; part number: 4410-0098.', ['known part 4410-0011', 'unknown part 4410-0098']],
  ['Part 2 of drawing 3 of 12, and parts for 2024-2026.', []],
  ['A0199, but not A6061, A2100, B0101, A0101x, A0101.pdf.', ['unknown alarm A0199']],
  ['Line 4410\u20130011.', ['unknown part 4410\u20130011']],
])('%s', (text, expected) => expect(found(text)).toEqual(expected))

test('words of the trade are no numbers of any of three machines', () => {
  const letters = read({
    drawing: ['M-101', 'IP-101', 'RS-101', 'EN101'],
    part: ['PT1000', 'CR1203', 'UN1001', '10-24-01'],
    alarm: ['A100', 'S100', 'F7', 'T10'],
  })
  const short = read({ drawing: ['1', 'A1'], part: ['12', 'M8x10'], alarm: ['24', 'IP1'] })
  for (const reader of [machine, letters, short])
    for (const word of tradeWords) expect([word, ...reader(`Look at the ${word} here, ${word}.`).map(({ written }) => written)]).toEqual([word])
})
