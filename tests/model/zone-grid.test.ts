import { expect, test } from 'vitest'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { SheetText } from '../../src/model/machine.ts'
import { zoneGridOf } from '../../src/model/zone-grid.ts'
import { startOfFile } from '../../src/source/place.ts'

const [machine] = loadMachine(diskFolder('example-machine', ''), diskFolder('content', 'content/')).machines
const sheets = machine?.drawings.flatMap(({ number, sheetList }) => sheetList.map((sheet) => ({ number: number.value, sheet }))) ?? []

test('every sheet of the example has its zones', () => {
  expect(sheets.length).toBeGreaterThan(10)
  for (const { number, sheet } of sheets)
    expect([number, zoneGridOf(sheet)?.numbers.join(''), zoneGridOf(sheet)?.letters.join('')]).toEqual([
      number,
      '12345678',
      number === 'L-001' ? 'ABCD' : 'ABCDEF',
    ])
})

test('a zone holds what the drawing shows there', () => {
  const sheet = sheets.find((it) => it.number === 'E-104' && it.sheet.number === 1)?.sheet
  const field = sheet && zoneGridOf(sheet)?.field('C4')
  const label = sheet?.texts.find(({ text }) => text.startsWith('brake output'))
  if (!field || !label) throw new Error('the sheet has no such field')
  expect(field.width).toBeCloseTo(190)
  expect(label.y > field.y && label.y < field.y + field.height).toBe(true)
  expect(zoneGridOf(sheet)?.field('G1')).toBeUndefined()
})

const viewBox = { x: 10, y: -20, width: 400, height: 200 }
const written = (text: string, x: number, y: number): SheetText => ({ text, x, y, fontSize: 3, angleDeg: 0, place: startOfFile('a.svg') })
const across = (names: string, y: number) => [...names].map((name, index) => written(name, 10 + (400 / names.length) * (index + 0.5), y))
const down = (names: string, x: number) => [...names].map((name, index) => written(name, x, -20 + (200 / names.length) * (index + 0.5)))

test.each([
  ['from the top left', [...across('1234', -18), ...down('ABC', 12)], '1234 ABC'],
  ['from the bottom right', [...across('4321', 178), ...down('CBA', 408)], '4321 CBA'],
  [
    'on all four sides, with a number inside',
    [...across('12', -18), ...across('12', 178), ...down('AB', 12), ...down('AB', 408), written('3', 100, 50)],
    '12 AB',
  ],
  ['two sides that differ', [...across('12', -18), ...across('123', 178), ...down('AB', 12)], 'none'],
  ['no letters', across('1234', -18), 'none'],
  ['a number that is missing', [...across('1245', -18), ...down('AB', 12)], 'none'],
  ['a title block with numbers in one corner', [written('1', 300, 175), written('2', 320, 175), ...down('AB', 12)], 'none'],
])('a border %s', (_, texts, expected) => {
  const grid = zoneGridOf({ viewBox, texts })
  expect(grid ? `${grid.numbers.join('')} ${grid.letters.join('')}` : 'none').toBe(expected)
})
