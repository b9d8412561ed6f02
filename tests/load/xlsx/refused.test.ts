import { utils, write } from '@e965/xlsx'
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { libreoffice, read, text, workbook } from './read.ts'

const sound = workbook([[text('a')], [text('1')]])

/** The sound workbook with one of its parts written anew. */
function changed(part: string, change: (xml: string) => string): Uint8Array {
  const parts = unzipSync(sound)
  const found = parts[part]
  if (!found) throw new Error(`the workbook has no ${part}`)
  return zipSync({ ...parts, [part]: strToU8(change(strFromU8(found))) })
}

const sheetPart = 'xl/worksheets/sheet1.xml'
const asForm = (bookType: 'xlsb' | 'ods') => {
  const book = utils.book_new(utils.aoa_to_sheet([['a'], ['1']]), 'Parts')
  return new Uint8Array(write(book, { type: 'array', bookType }))
}
const compound = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]
const locked = new Uint8Array([...compound, ...Buffer.alloc(1000), ...Buffer.from('EncryptedPackage', 'utf16le')])
const entity = '<!DOCTYPE worksheet [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>'

test('the workbook that the cases change is read', () => {
  expect(read(sound)).toMatchObject({ values: [['a'], ['1']], findings: [] })
  expect(read(changed(sheetPart, (xml) => xml)).values).toEqual([['a'], ['1']])
})

describe('one finding, and nothing read', () => {
  test.each([
    ['text', strToU8('a,b\n1,2\n'), 'the file is no XLSX workbook'],
    ['an empty file', new Uint8Array(), 'the file is no XLSX workbook'],
    ['an old workbook', libreoffice('devices.xls'), 'the file is a workbook in the old XLS form'],
    ['a locked workbook', locked, 'the workbook is locked with a password'],
    ['a binary workbook', asForm('xlsb'), 'the file is a workbook in the binary XLSB form'],
    ['an OpenDocument workbook', asForm('ods'), 'the file is an OpenDocument workbook'],
    ['another zip', zipSync({ 'a.txt': strToU8('a') }), 'the file is a zip, and no XLSX workbook is in it'],
    ['half a workbook', sound.subarray(0, sound.length / 2), 'the file is no whole XLSX workbook: it is cut off, damaged or of another kind'],
    [
      'a part that is no XML',
      changed('xl/workbook.xml', (xml) => xml.replace('</workbook>', '')),
      'the workbook cannot be read: `xl/workbook.xml` in it is not valid XML',
    ],
    [
      'a sheet that is no XML',
      changed(sheetPart, (xml) => xml.replace('</sheetData>', '')),
      `the worksheet \`Parts\` cannot be read: \`${sheetPart}\` in it is not valid XML`,
    ],
    [
      'an entity',
      changed(sheetPart, (xml) => xml.replace('<worksheet', `${entity}<worksheet`).replace('<v>', '<v>&b;')),
      `the worksheet \`Parts\` cannot be read: \`${sheetPart}\` in it is not valid XML`,
    ],
    [
      'a text that is not there',
      changed(sheetPart, (xml) => xml.replace('<v>0</v>', '<v>77</v>')),
      'the worksheet `Parts` cannot be read: a cell in row 1 names the text no. `77`, which is not in the workbook',
    ],
    [
      'a row without a number',
      changed(sheetPart, (xml) => xml.replace('<row r="1"', '<row r="one"')),
      'the worksheet `Parts` cannot be read: `one` stands for the number of a row',
    ],
    [
      'a row beyond all',
      changed(sheetPart, (xml) => xml.replaceAll('r="A2"', 'r="A2000000"').replaceAll('r="2"', 'r="2000000"')),
      'the worksheet `Parts` cannot be read: row 2000000 column 1 is beyond a worksheet',
    ],
  ])('%s', (_, bytes, message) => {
    const { findings, loaded } = read(bytes)
    expect(findings.map((it) => [it.rule, it.message])).toEqual([['unreadable-workbook', message]])
    expect(findings[0]).toMatchObject({ place: { file: 'data/list.xlsx', line: 1 }, note: expect.any(String), help: expect.any(String) })
    expect(loaded).toBeUndefined()
  })

  test('a small file that unpacks to 70 MB, without unpacking it', () => {
    const bomb = zipSync({ ...unzipSync(sound), [sheetPart]: new Uint8Array(70_000_000) }, { level: 1 })
    expect(bomb.length).toBeLessThan(1_000_000)
    expect(read(bomb).findings).toMatchObject([
      { rule: 'unreadable-workbook', message: `the worksheet \`Parts\` cannot be read: \`${sheetPart}\` unpacks to 70 MB; up to 64 MB are read` },
    ])
  })
})

describe('which worksheet', () => {
  test('is said where there are several, and where the name is wrong', () => {
    const cells = libreoffice('cells.xlsx')
    expect(read(cells).findings).toMatchObject([
      {
        rule: 'unknown-worksheet',
        message: 'the workbook has 2 worksheets',
        place: { file: 'machine.yaml file' },
        note: 'it has `Cells`, `Old list` (hidden); nothing in it was checked',
      },
    ])
    expect(read(cells, { sheet: 'Cell' }).findings).toMatchObject([
      { rule: 'unknown-worksheet', message: 'the workbook has no worksheet `Cell`', place: { file: 'machine.yaml sheet' } },
    ])
  })
})
