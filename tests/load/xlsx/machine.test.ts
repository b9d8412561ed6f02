import { readFileSync } from 'node:fs'
import type { CellObject, WorkSheet } from '@e965/xlsx'
import { describe, expect, test } from 'vitest'
import { diskFolder, memoryFolder } from '../../../src/load/folder.ts'
import { loadMachine } from '../../../src/load/load-machine.ts'
import { framesOf } from '../../../src/report/frame.ts'
import { reportFinding } from '../../../src/report/text.ts'
import { judgeLoaded, loadSound } from '../../sound-machine.ts'
import { libreoffice, number, text, workbook } from './read.ts'

const lists = ['alarms', 'bom', 'cards', 'devices', 'drawings', 'io-list']

/** The sound machine with its lists as workbooks that LibreOffice made, some of them changed; undefined keeps the CSV. */
function loadWithWorkbooks(changed: Readonly<Record<string, Uint8Array>> = {}, editYaml = (yaml: string) => yaml) {
  const sound = diskFolder('tests/fixtures/sound-machine', '')
  const files = new Map<string, string | Uint8Array>(sound.list().map((path) => [path, sound.read(path)]))
  files.set('machine.yaml', editYaml(readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8').replaceAll('.csv', '.xlsx')))
  for (const list of lists) {
    files.delete(`data/${list}.csv`)
    files.set(`data/${list}.xlsx`, changed[list] ?? libreoffice(`sound-${list}.xlsx`))
  }
  return loadMachine(memoryFolder(files), memoryFolder(new Map(), 'content/'))
}

function report(...args: Parameters<typeof loadWithWorkbooks>): string {
  const loaded = loadWithWorkbooks(...args)
  const frameOf = framesOf(loaded.texts)
  return judgeLoaded(loaded)
    .findings.map((finding) => reportFinding(finding, frameOf))
    .join('\n\n')
}

const withoutPlaces = (value: unknown) => JSON.stringify(value, (key, it) => (key === 'place' ? undefined : it))

test('workbooks hold what the CSV files hold', () => {
  expect(report()).toBe('')
  const [fromWorkbooks, fromCsv] = [loadWithWorkbooks().machines[0], loadSound().machines[0]]
  for (const table of ['devices', 'signals', 'cards', 'parts', 'alarms'] as const) {
    expect(fromCsv?.[table].length).toBeGreaterThan(0)
    expect(withoutPlaces(fromWorkbooks?.[table])).toBe(withoutPlaces(fromCsv?.[table]))
  }
})

const bom = (cells: readonly (CellObject | undefined)[][], properties?: WorkSheet) => ({
  bom: workbook([['number', 'description', 'quantity', 'supersededBy'].map(text), ...cells], properties),
})
const [oldSwitch, newSwitch] = [
  [text('100-00'), text('Old pressure switch'), number(0), text('100-01')],
  [text('100-01'), text('Pressure switch'), number(2)],
]

describe('a finding names file, sheet and cell, and shows the row', () => {
  test('of a value that a rule stops at', () => {
    expect(report(bom([[text('100-00'), text('Old pressure switch'), number(0), text('100-09')], newSwitch]))).toMatchInlineSnapshot(`
      "data/bom.xlsx:2:4: error: Parts!D2: the bill of materials has no part \`100-09\` [unknown-part]

        2 | 100-00  Old pressure switch  0  100-09
          |                                 ^^^^^^

        help: the nearest part numbers are \`100-00\`, \`100-01\`: check the bill of materials before you choose one"
    `)
  })

  test('of a value that cannot be read', () => {
    expect(report(bom([oldSwitch, [text('100-01'), text('Pressure switch'), text('two')]]))).toMatchInlineSnapshot(`
      "data/bom.xlsx:3:3: error: Parts!C3: \`quantity\` takes a number, and holds \`two\` [wrong-type]

        3 | 100-01  Pressure switch  two
          |                          ^^^"
    `)
  })

  test('of an error', () => {
    expect(report(bom([oldSwitch, [text('100-01'), text('Pressure switch'), { t: 'e', v: 0x17 }]]))).toMatchInlineSnapshot(`
      "data/bom.xlsx:3:3: error: Parts!C3: the cell holds the error \`#REF!\` [error-cell]

        3 | 100-01  Pressure switch  #REF!
          |                          ^^^^^

        help: its formula names a cell that was deleted: write the value itself"
    `)
  })

  test('of a formula without a result', () => {
    expect(report(bom([oldSwitch, [text('100-01'), text('Pressure switch'), { t: 'n', f: '1+1' } as CellObject]]))).toMatchInlineSnapshot(`
      "data/bom.xlsx:3:3: error: Parts!C3: the formula was saved without its result [formula-without-value]

        3 | 100-01  Pressure switch
          |                          ^

        note: formulas are not computed here; others of this sheet may lack theirs too
        help: open the workbook in a spreadsheet program and save it again, or put values in place of the formulas"
    `)
  })

  test('of a number that stands for a code and has lost digits', () => {
    expect(report(bom([oldSwitch, newSwitch, [number(1234567890123456), text('Seal'), number(1)]]))).toMatchInlineSnapshot(`
      "data/bom.xlsx:4:1: error: Parts!A4: the cell holds a number of 16 digits, and a spreadsheet keeps 15 of them [long-number]

        4 | 1234567890123456  Seal  1
          | ^^^^^^^^^^^^^^^^

        help: make the cell a text, and type all its digits again"
    `)
  })

  test('of a number that is shown in another way', () => {
    expect(report(bom([oldSwitch, newSwitch, [number(1.1, '0.00'), text('Seal'), number(1)]]))).toMatchInlineSnapshot(`
      "data/bom.xlsx:4:1: error: Parts!A4: \`number\` is the number 1.1, which is shown as \`1.10\` [wrong-type]

        4 | 1.1  Seal  1
          | ^^^

        help: make the cell a text, and type it again as it should be read"
    `)
  })

  test('of a merged cell, once a range', () => {
    const more = [
      [text('100-02'), text('Seal'), number(1)],
      [text('100-03'), undefined, number(1)],
      [text('100-04'), undefined, number(1)],
    ]
    expect(report(bom([oldSwitch, newSwitch, ...more], { '!merges': [{ s: { r: 3, c: 1 }, e: { r: 5, c: 1 } }] }))).toMatchInlineSnapshot(`
      "data/bom.xlsx:5:2: error: Parts!B5: the cell is merged with another and has no value of its own [merged-cells]

        5 | 100-03    1
          |         ^

        data/bom.xlsx:4:2: Parts!B4: the value \`Seal\` stands here alone

        4 | 100-02  Seal  1
          |         ^^^^

        help: take the merge apart, and write the value in each row that it is meant for"
    `)
  })

  test('of rows that are hidden', () => {
    expect(report(bom([oldSwitch, newSwitch], { '!rows': [{}, { hidden: true }] }))).toMatchInlineSnapshot(`
      "data/bom.xlsx:2:1: note: Parts!A2: row 2 is hidden [hidden-cells]

        2 | 100-00  Old pressure switch  0  100-01
          | ^^^^^^

        note: what is hidden was read like the rest"
    `)
  })

  test('of a column that is missing', () => {
    expect(
      report({ bom: workbook([[text('Parts of the press')], ['number', 'description', 'quantity'].map(text), newSwitch]) }),
    ).toMatchInlineSnapshot(`
      "data/bom.xlsx:1:1: error: Parts!A1: the bill of materials has no column \`number\`, \`description\`, \`quantity\` [missing-column]

        1 | Parts of the press
          | ^^^^^^^^^^^^^^^^^^

        note: the columns are read from row 1 of the worksheet \`Parts\`: Parts of the press
        help: add what is missing, or say in machine.yaml what the columns are called, under \`columns\`, or in which row the headings stand, with \`headerRow\`; the 2 rows were not checked because of this"
    `)
  })

  test('of values beyond the last heading, once a column', () => {
    expect(
      report(bom([oldSwitch, [...newSwitch, undefined, text('see note')], [text('100-02'), text('Seal'), number(1), undefined, text('too')]])),
    ).toMatchInlineSnapshot(`
      "data/bom.xlsx:3:5: note: Parts!E3: column E has no heading and is not read [unknown-column]

        3 | 100-01  Pressure switch  2    see note
          |                               ^^^^^^^^

        help: write its heading, or remove the column"
    `)
  })

  test('of a decimal sign', () => {
    expect(report({}, (yaml) => yaml.replace('data/bom.xlsx }', 'data/bom.xlsx, decimal: comma }'))).toMatchInlineSnapshot(`
      "machine.yaml:22:42: error: \`decimal\` is for CSV files, and \`data/bom.xlsx\` is a workbook [unknown-key]

        22 |   parts: { file: data/bom.xlsx, decimal: comma }
           |                                          ^^^^^

        note: a number in a workbook has no sign until it is shown
        help: take it out"
    `)
  })

  test('of a worksheet that is not there', () => {
    expect(report({}, (yaml) => yaml.replace('data/bom.xlsx }', 'data/bom.xlsx, sheet: Parts }'))).toMatchInlineSnapshot(`
      "machine.yaml:22:40: error: the workbook has no worksheet \`Parts\` [unknown-worksheet]

        22 |   parts: { file: data/bom.xlsx, sheet: Parts }
           |                                        ^^^^^

        note: it has \`bom\`; nothing in it was checked
        help: write its name as it stands on its tab"
    `)
  })
})
