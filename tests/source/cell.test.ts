import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cellPosition, columnLetters, placeOfCell, sheetOf } from '../../src/source/cell.ts'
import { comparePlaces, partOf } from '../../src/source/place.ts'

describe('a cell address', () => {
  test.each([
    [1, 'A'],
    [26, 'Z'],
    [27, 'AA'],
    [702, 'ZZ'],
    [703, 'AAA'],
    [16_384, 'XFD'],
  ])('column %i is %s', (column, letters) => expect(columnLetters(column)).toBe(letters))

  test('is read as it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 16_384 }), fc.integer({ min: 1, max: 1_048_576 }), (column, row) => {
        expect(cellPosition(`${columnLetters(column)}${row}`)).toEqual({ row, column })
      }),
    )
  })

  test.each(['', 'A', '7', 'A0', 'ABCD1', 'a1', 'A1:B2'])('%j is none', (text) => expect(cellPosition(text)).toBeUndefined())
})

test.each([
  ['Parts', 'Parts!C7'],
  ['Spare parts', "'Spare parts'!C7"],
  ["Owner's list!", "'Owner''s list!'!C7"],
  ['2026', "'2026'!C7"],
])('a cell of the sheet %s is named %s', (sheet, cell) => {
  const place = placeOfCell('bom.xlsx', sheet, 7, 3)
  expect(place.cell).toBe(cell)
  expect(sheetOf(place)).toBe(cell.slice(0, -3))
})

test('places of a workbook are ordered sheet by sheet', () => {
  const places = [placeOfCell('a.xlsx', 'Two', 1, 1), placeOfCell('a.xlsx', 'One', 2, 1), placeOfCell('a.xlsx', 'One', 1, 2)]
  expect(places.sort(comparePlaces).map(({ cell }) => cell)).toEqual(['One!B1', 'One!A2', 'Two!A1'])
})

test('a part of a cell is shown as the whole cell', () => {
  const cell = placeOfCell('a.xlsx', 'One', 1, 2)
  expect(partOf(cell, 3, 5)).toBe(cell)
  const { cell: _, ...text } = { ...cell, endColumn: 10 }
  expect(partOf(text, 3, 5)).toEqual({ ...text, column: 5, endColumn: 7 })
})
