import type { CellObject } from '@e965/xlsx'
import { describe, expect, test } from 'vitest'
import { compareRecords } from '../../src/changes/compare-records.ts'
import type { MachineRecords } from '../../src/changes/records.ts'
import { recordsOf } from '../../src/changes/records-of.ts'
import { parseCsv } from '../../src/load/csv.ts'
import { diskFolder, memoryFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { sourceText } from '../../src/source/source-text.ts'
import { text, workbook } from '../load/xlsx/read.ts'
import { line } from './records.ts'

const disk = diskFolder('example-machine', '')
/** The example machine without its pages and drawings, which are not compared. */
const files = new Map(
  disk
    .list()
    .filter((path) => path === 'machine.yaml' || path.startsWith('data/'))
    .map((path) => [path, new TextDecoder().decode(disk.read(path))]),
)
const textOf = (path: string) => files.get(path) ?? ''

/** The data with one file replaced; without a text the file is not there. */
function read(path?: string, text?: string | Uint8Array, others: readonly (readonly [string, string])[] = []): MachineRecords {
  const all = new Map<string, string | Uint8Array>([...files, ...others])
  if (path !== undefined) all.delete(path)
  if (path !== undefined && text !== undefined) all.set(path, text)
  const loaded = loadMachine(memoryFolder(all), memoryFolder(new Map()))
  const [first, ...rest] = loaded.machines
  if (!first) throw new Error('the folder is no machine')
  return recordsOf([first, ...rest], loaded)
}

const whole = read()

/** Where something could not be read; expects that this is all there is to tell, whichever side it is on. */
function check(damaged: MachineRecords): string[] {
  const places = ([old, now]: readonly [MachineRecords, MachineRecords]) => {
    const { changes, notCompared } = compareRecords(old, now)
    const found = notCompared.flatMap(({ place }) => (place ? [`${place.file}:${place.line}`] : []))
    if (found.length > 0) expect(changes.map(line)).toEqual([])
    return found
  }
  const found = places([whole, damaged])
  expect(places([damaged, whole])).toEqual(found)
  return found
}

const lists = [...files.keys()].filter((path) => path.endsWith('.csv'))

describe.each(lists)('%s', (path) => {
  const text = textOf(path)
  const csv = parseCsv(sourceText(path, text), () => {})
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)]
  const offset = (line: number, column: number) => (starts[line - 1] ?? 0) + column - 1

  /** The text with a cell of a row from 0, whatever is in quotes, replaced as a whole. */
  function damage(row: number, column: number, write: (value: string) => string): { line: number; text: string } {
    const cell = csv.records[row]?.cells[column]
    if (!cell) throw new Error(`no cell ${row}, ${column}`)
    const [from, to] = [offset(cell.place.line, cell.place.column), offset(cell.place.endLine, cell.place.endColumn)]
    const quote = text[from - 1] === '"' ? 1 : 0
    return { line: cell.place.line, text: text.slice(0, from - quote) + write(cell.value) + text.slice(to + quote) }
  }
  const columns = csv.header.map((_, column) => column)
  const rowOf = (column: number) => Math.floor(((column + 1) * csv.records.length) / (columns.length + 2))

  test('a value that cannot be read is named, and nothing in the list is told as gone or new', () => {
    const named = columns.filter((column) => {
      const { line, text } = damage(rowOf(column), column, () => 'x?')
      const found = check(read(path, text))
      if (found.length > 0) expect(found).toEqual([`${path}:${line}`])
      return found.length > 0
    })
    // Each list has a column of numbers or of fixed words.
    expect(named.length).toBeGreaterThan(0)
  })

  test('a quote that is never closed', () => {
    for (const column of columns) {
      const { line, text } = damage(rowOf(column), column, (value) => `"${value}`)
      expect(check(read(path, text))[0]).toBe(`${path}:${line}`)
    }
    for (const row of [1, 2, 3]) {
      const { text } = damage(csv.records.length - row, columns.length - 1, () => '"')
      expect(check(read(path, text))[0]).toContain(path)
    }
  })

  test('a separator too many', () => {
    const separator = path === 'data/alarms.csv' ? ';' : ','
    const named = columns.flatMap((column) => {
      const { line, text } = damage(rowOf(column), column, (value) => `x${separator}${value}`)
      const found = check(read(path, text))
      // With empty cells at the end of the row, the next column may take the value.
      if (found.length > 0) expect(found).toEqual([`${path}:${line}`])
      return found
    })
    expect(named.length).toBeGreaterThan(columns.length / 2)
  })

  test('headings in a quote that is never closed', () => expect(check(read(path, `"${text}`))).toEqual([`${path}:1`]))
  test('no file', () => expect(check(read(path))[0]).toMatch(/^machine\.yaml:\d+$/))
  test('not text', () => expect(check(read(path, '\0'))).toEqual([`${path}:1`]))
  test('nothing in it', () => expect(check(read(path, ''))).toEqual([`${path}:1`]))
})

describe('a column that the list does not have any more is named, and its values are not told as gone', () => {
  const cards = textOf('data/cards.csv')
  test.each([
    ['a text in another language', cards.replace('description.es', 'descripcion'), ['description.es']],
    ['a part number', cards.replace('slot,part', 'slot,teil'), ['part']],
  ])('%s', (_, text, columns) => {
    expect(text).not.toBe(cards)
    const { changes, notCompared } = compareRecords(whole, read('data/cards.csv', text))
    expect(changes.map(line)).toEqual([])
    expect(notCompared).toEqual([{ thing: 'card', extent: 'column', ids: columns, side: 'new' }])
  })

  test('what a new column holds is new', () => {
    const { changes, notCompared } = compareRecords(read('data/cards.csv', cards.replace('slot,part', 'slot,teil')), whole)
    expect(new Set(changes.map(({ thing, kind }) => `${thing} ${kind}`))).toEqual(new Set(['card part-replaced']))
    expect(notCompared).toEqual([])
  })
})

describe('a list in a workbook', () => {
  const csv = parseCsv(sourceText('cards', textOf('data/cards.csv')), () => {})
  const rows = [csv.header, ...csv.records.map(({ cells }) => cells)].map((cells) =>
    cells.map(({ value }) => (value === '' ? undefined : text(value))),
  )
  const error: CellObject = { t: 'e', v: 0x2a, w: '#N/A' }
  const column = (name: string) => csv.header.findIndex(({ value }) => value === name)
  /** The machine with its list of cards in a workbook, with a cell of one row replaced. */
  function inWorkbook(row?: number, name = '', cell: CellObject | undefined = error): MachineRecords {
    const bytes = workbook(rows.map((cells, r) => (r === row ? cells.map((it, c) => (c === column(name) ? cell : it)) : cells)))
    return read('data/cards.xlsx', bytes, [['machine.yaml', textOf('machine.yaml').replace('data/cards.csv', 'data/cards.xlsx')]])
  }
  test('is the same list', () => {
    expect(check(inWorkbook())).toEqual([])
    expect(compareRecords(whole, inWorkbook()).changes).toEqual([])
  })
  test.each(['card', 'channels', 'part', 'description.es'])('with an error in %s', (name) =>
    expect(check(inWorkbook(3, name))).toEqual(['data/cards.xlsx:4']),
  )
  test('with a name that is empty', () => expect(check(inWorkbook(3, 'card', text('')))).toEqual(['data/cards.xlsx:4']))
  test('that is damaged', () => {
    const machine = textOf('machine.yaml').replace('data/cards.csv', 'data/cards.xlsx')
    expect(check(read('data/cards.xlsx', 'PK', [['machine.yaml', machine]]))).toEqual(['data/cards.xlsx:1'])
  })
})

describe('signals that are made of variables', () => {
  const sound = diskFolder('tests/fixtures/sound-machine', '')
  const machine = new TextDecoder().decode(sound.read('machine.yaml'))
  const variables = 'name;address;type;comment\nI_1;%IX0.0;BOOL;PS-101\nI_2;%IX0.1;BOOL;PS-102\n'
  function made(list: string | undefined, tag = ''): MachineRecords {
    const all = new Map<string, string | Uint8Array>(sound.list().map((path) => [path, sound.read(path)]))
    all.set('machine.yaml', machine.replace('signals: { file: data/io-list.csv }', `symbols: { file: data/symbols.csv${tag} }`))
    if (list !== undefined) all.set('data/symbols.csv', list)
    const loaded = loadMachine(memoryFolder(all), memoryFolder(new Map()))
    const [first, ...rest] = loaded.machines
    if (!first) throw new Error('the folder is no machine')
    return recordsOf([first, ...rest], loaded)
  }
  const told = (now: MachineRecords) => {
    const { changes, notCompared } = compareRecords(made(variables), now)
    return [...changes.map(line), ...notCompared.map(({ extent, thing, place }) => `${extent} ${thing} ${place?.file}`)]
  }
  test.each([
    ['a quote that is never closed', made(variables.replace('\nI_2', '\n"I_2')), ['rows signal data/symbols.csv']],
    ['no file', made(undefined), ['list signal machine.yaml']],
    ['a pattern that is none', made(variables, ', tag: "(" '), ['list signal machine.yaml']],
    ['nothing wrong', made(variables), []],
    ['a variable that is really gone', made(variables.replace(/\nI_2.*/, '')), ['device signal-changed PS-102>PS-102: signal DI %IX0.1>']],
  ])('%s', (_, now, expected) => expect(told(now)).toEqual(expected))
})

describe('data/energy.yaml', () => {
  const text = textOf('data/energy.yaml')
  test.each([
    ['a wrong number', text.replace('waitS: 300', 'waitS: soon')],
    ['an indent too few', text.replace('\n    waitS: 300', '\n   waitS: 300')],
    ['a quote that is never closed', text.replace('waitS: 300', 'waitS: "300')],
  ])('%s', (_, damaged) => {
    expect(damaged).not.toBe(text)
    expect(check(read('data/energy.yaml', damaged))[0]).toMatch(/^data\/energy\.yaml:\d+$/)
  })
  test('no file', () => expect(check(read('data/energy.yaml'))[0]).toMatch(/^machine\.yaml:\d+$/))
})

test('an option that machine.yaml does not know leaves its row out of the comparison', () => {
  const bom = textOf('data/bom.csv')
  const damaged = bom.replace(/\n(1020-0215,[^\n]*),(?=\n)/, '\n$1,chain-oiller')
  expect(damaged).not.toBe(bom)
  expect(check(read('data/bom.csv', damaged))).toHaveLength(1)
})

test('a row for an option that no unit has is not told as gone', () => {
  const machine = textOf('machine.yaml')
  const now = read('machine.yaml', machine.replace('fitted: [chain-oiler]', 'fitted: []'))
  const { changes } = compareRecords(whole, now)
  expect(changes.map(({ kind }) => kind)).toContain('left-out')
  expect(changes.filter(({ kind }) => kind === 'removed')).toEqual([])
})
