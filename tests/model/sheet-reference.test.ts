import fc from 'fast-check'
import { expect, test } from 'vitest'
import { locateSheet, readSheetReference, writtenSheet } from '../../src/model/sheet-reference.ts'
import { startOfFile } from '../../src/source/place.ts'

// Source: trade practice of drawing locations, sheet.column:row.
test.each([
  ['/12.4', { sheet: 12, column: 4 }],
  ['/12.4:C', { sheet: 12, column: 4, row: 'C' }],
])('DG-08: %s', (text, read) => expect(readSheetReference(text)).toEqual(read))

test.each([
  ['/3', { sheet: 3 }],
  ['/3.10', { sheet: 3, column: 10 }],
])('%s', (text, read) => expect(readSheetReference(text)).toEqual(read))

test.each([
  '12',
  '12.4',
  '/',
  '/0',
  '/012',
  '/12.',
  '/12.0',
  '/12.04',
  '/12:C',
  '/12.4:',
  '/12.4:c',
  '/12.4C',
  '/12.4:CC',
  ' /12.4',
  '/12,4',
  '=A1/12.4',
  '',
])('`%s` is none', (text) => expect(readSheetReference(text)).toBeUndefined())

test('its parts have places of their own', () => {
  const place = { ...startOfFile('a.csv'), column: 5, endColumn: 12 }
  const cell = locateSheet('/12.4:C', place)
  expect(cell).toMatchObject({ value: 12, place: { column: 6, endColumn: 8 }, zone: { value: 'C4', place: { column: 9, endColumn: 12 } } })
})

test('what is written is what was read', () => {
  const row = fc.option(fc.constantFrom(...'ABCDEFGHJ'), { nil: '' })
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 1, max: 99 }), row, (sheet, column, row) => {
      const text = `${sheet}.${column}${row === '' ? '' : `:${row}`}`
      const cell = locateSheet(`/${text}`, startOfFile('a.csv'))
      expect(cell && writtenSheet(cell)).toBe(text)
    }),
  )
})
