import { expect, test } from 'vitest'
import type { Drawing, Sheet } from '../../src/model/machine.ts'
import { referenceReader } from '../../src/site/sheet-references.ts'

/** E-104 with three sheets, E-102 with two, P-201 with one; the text stands on E-104 sheet 2. */
function check(text: string, expected: string | undefined): void {
  const drawings = [drawing('E-104', 3), drawing('E-102', 2), drawing('P-201', 1), drawing('12', 2)]
  const [own] = drawings
  const sheet = own?.sheetList[1]
  if (!own || !sheet) throw new Error('the drawing has no sheet 2')
  const found = referenceReader({ drawings })(own, { ...sheet, texts: [{ text, x: 0, y: 0, fontSize: 14, angleDeg: 0, place: own.number.place }] })
  expect(found.map((it) => `${it.drawing} ${it.sheet}`).join()).toBe(expected ?? '')
}

function drawing(number: string, sheets: number): Drawing {
  const place = { file: 'drawings.csv', line: 1, column: 1, endLine: 1, endColumn: 1 }
  const sheetList = Array.from({ length: sheets }, (_, index) => ({ number: index + 1, texts: [] }) as unknown as Sheet)
  return { number: { value: number, place }, sheetList } as unknown as Drawing
}

test.each([
  ['/3.4', 'E-104 3'],
  ['24 V /1.2', 'E-104 1'],
  ['sheet 3', 'E-104 3'],
  ['to Sheet 1, zone B4', 'E-104 1'],
  ['véase hoja 3', 'E-104 3'],
  ['Blatt 1', 'E-104 1'],
  ['L+ 24 V d.c. from E-102 sheet 1', 'E-102 1'],
  ['E-102/2.7', 'E-102 2'],
  ['E-102/2', 'E-102 2'],
  ['see P-201', 'P-201 1'],
])('%s leads to %s', check)

test.each([
  ['its own sheet', 'Sheet 2 of 3'],
  ['its own drawing', 'E-104'],
  ['a sheet that is not there', '/9.1'],
  ['a sheet that the other drawing has not', 'E-102 sheet 7'],
  ['a fraction', '1/3.5'],
  ['poles', '/3'],
  ['a date', '14/3.26'],
  ['a word that holds the word', 'worksheets 3'],
  ['a short number that is a drawing too', 'pin 12'],
  ['a flow', '5 m/1.5 s'],
])('%s leads nowhere', (_, text) => check(text, undefined))
