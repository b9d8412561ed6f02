import { readFileSync } from 'node:fs'
import * as XLSX from '@e965/xlsx'
import fc from 'fast-check'
import { zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { rules } from '../../../src/check/rules.ts'
import { checkLoaded } from '../../../src/check/run.ts'
import { diskFolder, memoryFolder } from '../../../src/load/folder.ts'
import { loadMachine } from '../../../src/load/load-machine.ts'
import { loadWorksheet } from '../../../src/load/xlsx/load-worksheet.ts'
import { framesOf } from '../../../src/report/frame.ts'
import { reportFinding } from '../../../src/report/text.ts'
import type { Finding } from '../../../src/source/finding.ts'
import { startOfFile } from '../../../src/source/place.ts'

type Cells = readonly (readonly (XLSX.CellObject | string | number | boolean | null)[])[]

/** A workbook with one worksheet, as another program writes it; `change` may set what a list of cells cannot. */
function workbook(cells: Cells, change: (sheet: XLSX.WorkSheet, book: XLSX.WorkBook) => void = () => undefined): Uint8Array {
  const sheet = XLSX.utils.aoa_to_sheet(cells.map((row) => row.map((cell) => (isCell(cell) ? null : cell))))
  for (const [r, row] of cells.entries()) for (const [c, cell] of row.entries()) if (isCell(cell)) sheet[XLSX.utils.encode_cell({ r, c })] = cell
  const width = Math.max(...cells.map((row) => row.length))
  sheet['!ref'] = XLSX.utils.encode_range({ s: { r: 0, c: 0 }, e: { r: cells.length - 1, c: width - 1 } })
  const book = XLSX.utils.book_new(sheet, 'Parts')
  change(sheet, book)
  return new Uint8Array(XLSX.write(book, { type: 'array', bookType: 'xlsx', compression: true }))
}

const isCell = (cell: unknown): cell is XLSX.CellObject => typeof cell === 'object' && cell !== null

/** The texts of a worksheet, row by row, and what was found. */
function read(bytes: Uint8Array, options: { sheet?: string; headerRow?: number } = {}): { rows: string[][]; findings: string[] } {
  const findings: string[] = []
  const choice = { sheet: options.sheet, headerRow: options.headerRow, placeOf: () => startOfFile('machine.yaml') }
  const loaded = loadWorksheet(bytes, 'bom.xlsx', choice, ({ id }, { place, message }) =>
    findings.push(`${place.cell ?? place.file} ${id}: ${message}`),
  )
  const rows = loaded ? [loaded.rows.header, ...loaded.rows.records.map(({ cells }) => cells)].map((cells) => cells.map(({ value }) => value)) : []
  return { rows, findings }
}

const machine = diskFolder('tests/fixtures/sound-machine', '')

/** The findings of the sound machine with this workbook as its bill of materials. */
function check(bytes: Uint8Array, entry = 'file: data/bom.xlsx'): { findings: Finding[]; report: string } {
  const files = new Map<string, string | Uint8Array>(machine.list().map((path) => [path, machine.read(path)]))
  const yaml = new TextDecoder().decode(machine.read('machine.yaml')).replace('file: data/bom.csv', entry)
  files.set('machine.yaml', yaml).set('data/bom.xlsx', bytes)
  const loaded = loadMachine(memoryFolder(files), memoryFolder(new Map()))
  const findings = checkLoaded(loaded, rules)
  const frameOf = framesOf(loaded.texts)
  return { findings, report: findings.map((finding) => reportFinding(finding, frameOf)).join('\n\n') }
}

const sound: Cells = [
  ['number', 'description', 'quantity', 'supersededBy'],
  ['100-00', 'Old pressure switch', 0, '100-01'],
  ['100-01', 'Pressure switch', 2, null],
]

describe('cells', () => {
  test('texts keep their zeros, and numbers with the format of a code keep their digits', () => {
    const { rows, findings } = read(
      workbook([
        ['text', 'code', 'parts', 'number', 'yes'],
        ['007', { t: 'n', v: 12345, z: '0000000' }, { t: 'n', v: 12034, z: '000-000' }, 1.25, true],
        ['1.10', { t: 'n', v: 7, z: '00' }, { t: 'n', v: 1, z: '000-000' }, 0.1 + 0.2, false],
      ]),
    )
    expect(findings).toEqual([])
    expect(rows.slice(1)).toEqual([
      ['007', '0012345', '012-034', '1.25', 'TRUE'],
      ['1.10', '07', '000-001', '0.3', 'FALSE'],
    ])
  })

  // Serial numbers of days: ECMA-376 part 1, 18.17.4.1; 60 is the 29 February 1900 that never was.
  test.each([
    [1, '1900-01-01'],
    [59, '1900-02-28'],
    [60, '1900-02-29'],
    [61, '1900-03-01'],
    [36526, '2000-01-01'],
    [45351, '2024-02-29'],
  ])('day %i is %s', (serial, date) => {
    expect(read(workbook([['date'], [{ t: 'n', v: serial, z: 'yyyy-mm-dd' }]])).rows[1]).toEqual([date])
  })

  test('a workbook that counts from 1904', () => {
    const from1904 = workbook([['date'], [{ t: 'n', v: 0, z: 'yyyy-mm-dd' }]], (_, book) => {
      book.Workbook = { WBProps: { date1904: true } }
    })
    expect(read(from1904).rows[1]).toEqual(['1904-01-01'])
  })

  test('any text comes back as it was written', () => {
    const text = fc
      .string({ unit: 'grapheme', maxLength: 40 })
      .filter((it) => it.trim() === it && it !== '' && !/\p{Cc}|\p{Cs}|\ufffe|\uffff|_x[0-9A-Fa-f]{4}_/u.test(it))
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 8 }), (pairs) => {
        expect(read(workbook([['a', 'b'], ...pairs])).rows.slice(1)).toEqual(pairs)
      }),
      { numRuns: 60 },
    )
  })

  test('numbers in usual formats are what another reader shows', () => {
    const number = fc.oneof(
      fc.integer({ min: 0, max: 9_999_999 }),
      fc.double({ min: 0, max: 1e6, noNaN: true }).map((it) => Math.round(it * 1000) / 1000),
    )
    fc.assert(
      fc.property(fc.array(number, { minLength: 1, maxLength: 10 }), (numbers) => {
        const bytes = workbook([['code'], ...numbers.map((v) => [{ t: 'n', v: Math.round(v), z: '0000000000' } as const])])
        const sheet = XLSX.read(bytes).Sheets.Parts
        const shown = numbers.map((_, index) => sheet?.[`A${index + 2}`]?.w ?? XLSX.SSF.format('0000000000', Math.round(numbers[index] ?? 0)))
        expect(read(bytes).rows.slice(1).flat()).toEqual(shown)
      }),
      { numRuns: 40 },
    )
  })

  test('a file that LibreOffice 7.4 made of a CSV with text columns', () => {
    // soffice --headless --convert-to xlsx --infilter=CSV:44,34,76,1,1/2/2/2/3/1/4/2/5/2
    expect(read(readFileSync('tests/fixtures/load/bom-libreoffice.xlsx'))).toEqual({
      findings: [],
      rows: [
        ['number', 'description', 'quantity', 'unit', 'supersededBy'],
        ['0012-30', 'Seal, Ø 40', '2', 'pcs', ''],
        ['007', 'Spring', '1.5', 'm', '0012-30'],
      ],
    })
  })
})

describe('in a machine', () => {
  test('a sound workbook gives no finding', () => expect(check(workbook(sound)).report).toBe(''))

  test('a finding names file, sheet and cell, and shows the row', () => {
    const { report } = check(workbook([...sound, ['100-02', 'Valve', 'two', null]]))
    expect(report).toMatchInlineSnapshot(`
      "data/bom.xlsx:4:3: error: Parts!C4: \`quantity\` takes a number, and holds \`two\` [wrong-type]

        4 | 100-02  Valve  two
          |                ^^^"
    `)
  })

  test.each([
    ['error-cell', 'Parts!C3', [...sound.slice(0, 2), ['100-01', 'Pressure switch', { t: 'e', v: 0x17, w: '#REF!' }, null]]],
    ['formula-without-value', 'Parts!C3', [...sound.slice(0, 2), ['100-01', 'Pressure switch', { t: 'n', f: 'A1+1' }, null]]],
    ['long-number', 'Parts!A4', [...sound, [{ t: 'n', v: 1234567890123456 }, 'Valve', 1, null]]],
  ] as const)('%s at %s', (rule, cell, cells) => {
    expect(check(workbook(cells as Cells)).findings.map((finding) => [finding.rule, finding.place.cell])).toContainEqual([rule, cell])
  })

  test('merged cells have one value, and the other rows are told', () => {
    const merged = workbook([...sound, ['100-02', 'Valve', 1, null], [null, 'Seal', 1, null]], (sheet) => {
      sheet['!merges'] = [{ s: { r: 3, c: 0 }, e: { r: 4, c: 0 } }]
    })
    expect(check(merged).findings.map(({ rule, place }) => [rule, place.cell])).toContainEqual(['merged-cells', 'Parts!A5'])
  })

  test('hidden rows and columns are read, and said once', () => {
    const hidden = workbook(sound, (sheet) => {
      sheet['!rows'] = [{}, { hidden: true }]
      sheet['!cols'] = [{}, {}, {}, { hidden: true }]
    })
    expect(check(hidden).findings).toMatchObject([{ rule: 'hidden-cells', severity: 'note', message: 'row 2 and column D are hidden' }])
  })

  test('of several worksheets machine.yaml names one', () => {
    const two = workbook(sound, (_, book) => XLSX.utils.book_append_sheet(book, XLSX.utils.aoa_to_sheet([['old']]), 'Old list'))
    expect(check(two).findings).toMatchObject([{ rule: 'unknown-worksheet', place: { file: 'machine.yaml' } }])
    expect(check(two, 'file: data/bom.xlsx, sheet: Parts').report).toBe('')
    expect(check(two, 'file: data/bom.xlsx, sheet: Part').findings).toMatchObject([{ rule: 'unknown-worksheet' }])
  })

  test('headings further down', () => {
    const below = workbook([['Bill of materials'], [null], ...sound])
    expect(check(below, 'file: data/bom.xlsx, headerRow: 3').report).toBe('')
  })

  test('a key for workbooks at a text file', () => {
    expect(check(workbook(sound), 'file: data/bom.csv, sheet: Parts').findings).toMatchObject([{ rule: 'unknown-key' }])
  })

  test.each([
    ['no zip', new TextEncoder().encode('number,description')],
    ['an empty file', new Uint8Array()],
    ['a zip of something else', zipSync({ 'readme.txt': new Uint8Array([65]) })],
    ['an old binary workbook', Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0, 0, 0)],
    ['a cut file', workbook(sound).slice(0, 900)],
  ])('%s: one finding, and the rest of the check runs', (_, bytes) => {
    expect(check(bytes).findings.map(({ rule }) => rule)).toEqual(['unreadable-workbook'])
  })
})
