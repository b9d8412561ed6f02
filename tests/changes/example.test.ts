import { expect, test } from 'vitest'
import { affectedBy } from '../../src/changes/affected.ts'
import { compareRecords } from '../../src/changes/compare-records.ts'
import { dataText, readData } from '../../src/changes/data-file.ts'
import type { MachineRecords } from '../../src/changes/records.ts'
import { recordsOf } from '../../src/changes/records-of.ts'
import { reportChanges } from '../../src/changes/report.ts'
import { diskFolder, memoryFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { Machine } from '../../src/model/machine.ts'

const example = diskFolder('example-machine', '')
const shared = diskFolder('content', 'content/')

/** The machines of the example, with some texts of its files changed. */
function machines(edits: readonly [file: string, was: RegExp, is: string][] = []): [Machine, ...Machine[]] {
  const files = new Map<string, string | Uint8Array>(example.list().map((path) => [path, example.read(path)]))
  for (const [file, was, is] of edits) {
    const before = files.get(file)
    const text = typeof before === 'string' ? before : new TextDecoder().decode(before)
    expect(text, `${file}: ${was}`).toMatch(was)
    files.set(file, text.replace(was, is))
  }
  const [first, ...others] = loadMachine(memoryFolder(files), shared).machines
  if (!first) throw new Error('the example cannot be read')
  return [first, ...others]
}

const told = (old: MachineRecords, now: MachineRecords) =>
  compareRecords(old, now).changes.map(({ thing, kind, was, is }) => `${thing} ${kind} ${was ?? ''}>${is ?? ''}`)

/** Two switches exchange their tags in the device list, with their rows in the I/O list. */
const exchanged: [string, RegExp, string][] = [
  ['data/devices.csv', /^PRS204,(.*)\nPRS205,(.*)$/m, 'PRS205,$1\nPRS204,$2'],
  ['data/io-list.csv', /I_LiftBottom,PRS204,(.*)\n(.*)I_LiftTop,PRS205/m, 'I_LiftBottom,PRS205,$1\n$2I_LiftTop,PRS204'],
]

const edits: [string, RegExp, string][] = [
  ...exchanged,
  ['data/devices.csv', /^LS206,/m, 'LS216,'],
  ['data/io-list.csv', /,LS206,/, ',LS216,'],
  ['data/io-list.csv', /^%IX0\.1,/m, '%IX9.7,'],
  ['data/io-list.csv', /X2:1,103101/, 'X2:91,103101'],
  ['data/devices.csv', /"infeed frame, front, first post",4420-0131/, '"infeed frame, front, first post",4420-0150'],
  ['data/alarms.csv', /^A0101;Stack jam at the infeed/m, 'A0101;Stack is stuck at the infeed'],
  ['data/alarms.csv', /^(A0002;.*);stop;/m, '$1;hold;'],
  ['data/drawings.csv', /^(E-101,.*),C$/m, '$1,D'],
  ['data/bom.csv', /^(0012-0100,.*),6,pcs/m, '$1,8,pcs'],
  ['data/formats.csv', /,412,mm/, ',414,mm'],
  [
    'data/devices.csv',
    /\n$/,
    '\nLS299,limit switch,final de carrera,Cover of the drive shut,Tapa del accionamiento cerrada,limit-switch,lift,,,,4430-0007,,,\n',
  ],
]

test('the example and itself have no change, and its data comes back from a release', () => {
  const records = recordsOf(machines())
  expect(told(records, records)).toEqual([])
  const back = readData(dataText(records))
  expect(back && told(back, records)).toEqual([])
})

test('twelve known changes of the example are told, and none is invented', () => {
  expect(told(recordsOf(machines()), recordsOf(machines(edits)))).toEqual([
    'device means-another PRS204>PRS204',
    'device means-another PRS205>PRS205',
    'device renamed LS206>LS216',
    'device renamed PRS205>PRS204',
    'device renamed PRS204>PRS205',
    'device re-addressed PEC103>PEC103',
    'device re-terminaled PEC102>PEC102',
    'drawing revision-changed E-101>E-101',
    'device part-replaced PEC102>PEC102',
    'alarm reaction-changed A0002>A0002',
    'alarm reworded A0101>A0101',
    'part quantity-changed 0012-0100>0012-0100',
    'setting value-changed C6420 guide-width-infeed>C6420 guide-width-infeed',
    'device added >LS299',
  ])
})

test('pages in every language that speak of a changed device are named, with their lines', () => {
  const now = machines(exchanged)
  const comparison = compareRecords(recordsOf(machines()), recordsOf(now))
  const affected = affectedBy(comparison.changes, now)
  const [dangerous] = comparison.changes
  expect(dangerous).toMatchObject({ kind: 'means-another', is: 'PRS204' })
  const places = dangerous ? (affected.get(dangerous) ?? []) : []
  expect(places.map(({ page, language }) => `${page} ${language}`)).toContain('alarms/a0201-lift-position es')
  for (const { place } of places) expect(new TextDecoder().decode(example.read(place.file)).split('\n')[place.line - 1]).toContain('PRS204')
  expect(reportChanges({ ...comparison, affected })).toMatch(/^The same name, another thing.*\(2\)\n {2}device `PRS204` means another one now/m)
})

test('5,000 devices are compared in half a second', () => {
  const row = (index: number, shift: number) => ({
    values: {
      tag: `LS${index + shift}`,
      kind: 'limit switch',
      description: `Gate ${index} of line ${index % 40} shut`,
      area: `a${index % 20}`,
      part: `P-${index % 90}`,
    },
  })
  const [machine] = machines()
  const { revision } = recordsOf([machine])
  const lists = (shift: number): MachineRecords => ({
    revision,
    tables: {
      devices: Array.from({ length: 5000 }, (_, index) => row(index, shift)),
      signals: [],
      cards: [],
      parts: [],
      drawings: [],
      alarms: [],
      formats: [],
      energy: [],
    },
    unread: [],
    broken: [],
  })
  const start = performance.now()
  const { changes } = compareRecords(lists(0), lists(1))
  const tookMs = performance.now() - start
  expect(changes.filter(({ kind }) => kind === 'renamed').length).toBe(5000)
  // Half a second on a quiet machine; a busy one may take several times as long.
  expect(tookMs).toBeLessThan(4000)
})
