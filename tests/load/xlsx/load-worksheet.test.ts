import { type CellObject, read as readOracle } from '@e965/xlsx'
import fc from 'fast-check'
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { libreoffice, number, read, text, workbook } from './read.ts'

/** The only value below the heading of a workbook with one column. */
const only = (cell: CellObject, is1904 = false) => read(workbook([[text('what')], [cell]], undefined, is1904)).rows[1]?.[0]

describe('cells as LibreOffice writes them', () => {
  const { rows, findings } = read(libreoffice('cells.xlsx'), { sheet: 'Cells' })
  const cells = new Map(rows.map(([what, value]) => [what?.value, value]))

  test.each([
    ['text with zeros', '0012'],
    ['seven digits', '0012345'],
    ['code with hyphen', '012-345'],
    ['rich text', 'Seal 25 x 3, NBR'],
    ['two lines', 'first\nsecond'],
    ['plain number', '4.5'],
    ['date', '2024-02-29'],
    ['truth', 'TRUE'],
    ['formula', '9'],
    ['text formula', 'P0012'],
    ['hidden row', 'still read'],
  ])('%s', (what, value) => {
    expect(cells.get(what)).toMatchObject({ value })
    expect(cells.get(what)?.fault).toBeUndefined()
    expect(cells.get(what)?.shown).toBeUndefined()
  })

  test('a number that is shown in another way keeps both', () => {
    expect(cells.get('two decimals')).toMatchObject({ value: '1.1', shown: '1.10' })
    expect(cells.get('percent')).toMatchObject({ value: '0.5', shown: '50%' })
  })

  test('an error is a fault with its cell', () => {
    expect(cells.get('no match')).toMatchObject({
      value: '',
      fault: { rule: { id: 'error-cell' } },
      place: { line: 14, column: 2, cell: 'Cells!B14' },
    })
  })

  test('the value of a merged range belongs to its first cell', () => {
    expect(rows.at(-1)?.[0]).toMatchObject({ value: '', mergedWith: { value: 'merged', place: { cell: 'Cells!A16' } } })
  })

  test('what is hidden is read, and said once', () => {
    expect(findings.map(({ rule, message }) => [rule, message])).toEqual([['hidden-cells', 'row 13 and column C are hidden']])
    expect(read(libreoffice('cells.xlsx'), { sheet: 'Old list' }).findings).toMatchObject([
      { rule: 'hidden-cells', message: 'the worksheet is hidden', place: { cell: "'Old list'!A1" } },
    ])
  })

  test('the oracle shows the same text where the value is text, a code or a plain number', () => {
    const sheet = readOracle(libreoffice('cells.xlsx')).Sheets.Cells ?? {}
    const shown = rows.slice(0, 7).map((_, row) => (sheet[`B${row + 1}`] as CellObject | undefined)?.w)
    expect(rows.slice(0, 7).map(([, value]) => value?.value)).toEqual(shown)
  })
})

describe('dates', () => {
  test.each([
    [1, 'yyyy-mm-dd', false, '1900-01-01'],
    [59, 'yyyy-mm-dd', false, '1900-02-28'],
    [60, 'yyyy-mm-dd', false, '1900-02-29'],
    [61, 'd.m.yy', false, '1900-03-01'],
    [36585, 'm/d/yy', false, '2000-02-29'],
    [73050, 'yyyy-mm-dd', false, '2099-12-31'],
    [73051, 'yyyy-mm-dd', false, '2100-01-01'],
    [73110, 'yyyy-mm-dd', false, '2100-03-01'],
    [2958465, 'yyyy-mm-dd', false, '9999-12-31'],
    [0, 'yyyy-mm-dd', true, '1904-01-01'],
    [1, 'yyyy-mm-dd', true, '1904-01-02'],
    [45351.5, 'yyyy-mm-dd hh:mm', false, '2024-02-29T12:00'],
    [45351.999999, 'yyyy-mm-dd', false, '2024-02-29'],
    [0.75, 'hh:mm', false, '18:00'],
    [1.5, '[h]:mm', false, '36:00'],
  ])('%d as %s (1904: %s) is %s', (serial, format, is1904, expected) => {
    expect(only(number(serial, format), is1904)).toMatchObject({ value: expected })
  })

  test('agree with the oracle on every kind of day', () => {
    fc.assert(
      fc.property(fc.integer({ min: 61, max: 2_958_465 }), (serial) => {
        const bytes = workbook([[text('what')], [number(serial, 'yyyy-mm-dd')]])
        expect(read(bytes).values[1]).toEqual([(readOracle(bytes).Sheets.Parts?.A2 as CellObject | undefined)?.w])
      }),
      { numRuns: 100 },
    )
  })
})

describe('numbers', () => {
  test.each([
    [0.1 + 0.2, undefined, '0.3'],
    [1e-7, undefined, '0.0000001'],
    [123456789012345, undefined, '123456789012345'],
    [-5, 'General', '-5'],
    [42, '"P"0000', 'P0042'],
    [1234567, '000-0000', '123-4567'],
    [12345678, '000-0000', '1234-5678'],
    [7, '00\\ 000', '00 007'],
  ])('%d as %s is %s', (value, format, expected) => {
    expect(only(number(value, format))).toMatchObject({ value: expected })
    expect(only(number(value, format))?.shown).toBeUndefined()
  })

  test('of more than 15 digits are a fault', () => {
    expect(only(number(1234567890123456))).toMatchObject({ fault: { rule: { id: 'long-number' } } })
  })

  test('above every number that a spreadsheet keeps are a fault', () => {
    const parts = unzipSync(workbook([[text('what')], [number(7)]]))
    const part = 'xl/worksheets/sheet1.xml'
    const bytes = zipSync({ ...parts, [part]: strToU8(strFromU8(parts[part] ?? new Uint8Array()).replace('<v>7</v>', '<v>1e309</v>')) })
    expect(read(bytes).rows[1]?.[0]?.fault).toMatchObject({
      rule: { id: 'long-number' },
      problem: { message: 'the cell holds `1e309`, which is above every number that a spreadsheet keeps', place: { cell: 'Parts!A2' } },
    })
  })
})

test('what the oracle writes is read again as it was', () => {
  const letters = fc.string({ unit: 'binary', maxLength: 12 }).filter((it) => !/[\p{Cc}\p{Cs}\uFFFE\uFFFF]|_x/u.test(it) && it.trim() === it)
  const cell = fc.oneof(
    letters.map((it) => ({ cell: text(it), as: it })),
    fc.integer({ min: -1e9, max: 1e9 }).map((it) => ({ cell: number(it), as: String(it) })),
    fc.integer({ min: 0, max: 9_999_999 }).map((it) => ({ cell: number(it, '0000000'), as: String(it).padStart(7, '0') })),
    fc.boolean().map((it) => ({ cell: { t: 'b', v: it } as CellObject, as: it ? 'TRUE' : 'FALSE' })),
    fc.constant({ cell: undefined, as: '' }),
  )
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { maxLength: 8 }), (rows) => {
      const bytes = workbook([['a', 'b', 'c'].map(text), ...rows.map((row) => row.map(({ cell }) => cell))])
      const { values, findings } = read(bytes)
      const wanted = rows.map((row) => row.map(({ as }) => as)).filter((row) => row.some((it) => it !== ''))
      expect(values).toEqual([['a', 'b', 'c'], ...wanted])
      expect(findings).toEqual([])
    }),
    { numRuns: 200 },
  )
})

describe('the heading row', () => {
  const titled = workbook([[text('Parts of the press')], [], [text('number'), text('maker\n name')], [text('1'), text('Nobody')]])

  test('is the first that is not empty', () => {
    expect(read(workbook([[], [text('a')], [text('1')]])).values).toEqual([['a'], ['1']])
  })

  test('is the one that machine.yaml gives, its headings on one line', () => {
    expect(read(titled, { headerRow: 3 }).values).toEqual([
      ['number', 'maker name'],
      ['1', 'Nobody'],
    ])
  })

  test('is reported where it is empty', () => {
    expect(read(titled, { headerRow: 2 }).findings).toMatchObject([{ rule: 'missing-column', place: { file: 'machine.yaml headerRow' } }])
  })
})

test('a formula without a result is a fault, and not an empty cell', () => {
  const bytes = workbook([[text('a')], [{ t: 'n', f: '1+1' } as CellObject]])
  expect(read(bytes).rows[1]?.[0]).toMatchObject({ fault: { rule: { id: 'formula-without-value' } } })
})
