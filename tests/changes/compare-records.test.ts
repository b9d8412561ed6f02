import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { things } from '../../src/changes/change.ts'
import { compareRecords } from '../../src/changes/compare-records.ts'
import type { MachineRecords, RecordTable } from '../../src/changes/records.ts'
import { type Lists, line, linesOf, records } from './records.ts'

const check = (old: Lists, now: Lists, expected: readonly string[]) => expect(linesOf(old, now)).toEqual(expected)

const down = 'B10;switch;Lift down;lift;P1;E-1;1'
const up = 'B11;switch;Lift up;lift;P1;E-1;1'
const oil = 'B12;float;Oil low;lift;P2;E-1;2'

describe('devices', () => {
  test.each<[string, readonly string[], readonly string[], readonly string[]]>([
    ['nothing', [down, up], [up, down], []],
    ['added', [down], [down, oil], ['device added >B12']],
    ['removed', [down, oil], [down], ['device removed B12>']],
    ['renamed', [down], ['B90;switch;Lift down;lift;P1;E-1;1'], ['device renamed B10>B90: name B10>B90']],
    ['reworded', [down], ['B10;switch;Lift at the bottom;lift;P1;E-1;1'], ['device reworded B10>B10: description Lift down>Lift at the bottom']],
    ['moved', [down], ['B10;switch;Lift down;wash;P1;E-1;1'], ['device moved B10>B10: area lift>wash']],
    ['on another sheet', [down], ['B10;switch;Lift down;lift;P1;E-1;3'], ['device drawing-changed B10>B10: sheet 1>3']],
    ['with another part', [down], ['B10;switch;Lift down;lift;P9;E-1;1'], ['device part-replaced B10>B10: part P1>P9']],
    [
      'a tag on a device of another kind',
      [down],
      ['B10;float;Oil low;lift;P2;E-1;2'],
      ['device means-another B10>B10: text switch, Lift down>float, Oil low (what was `B10` is gone) (what is `B10` now is new)'],
    ],
    [
      'a chain of new tags',
      [down, up],
      ['B11;switch;Lift down;lift;P1;E-1;1', 'B12;switch;Lift up;lift;P1;E-1;1'],
      [
        'device means-another B11>B11: text switch, Lift up>switch, Lift down (what was `B11` is `B12` now) (what is `B11` now was `B10`)',
        'device renamed B10>B11: name B10>B11',
        'device renamed B11>B12: name B11>B12 (for pages with `B11` see what it means now)',
      ],
    ],
    [
      'two tags exchanged',
      [down, up],
      ['B11;switch;Lift down;lift;P1;E-1;1', 'B10;switch;Lift up;lift;P1;E-1;1'],
      [
        'device means-another B10>B10: text switch, Lift down>switch, Lift up (what was `B10` is `B11` now) (what is `B10` now was `B11`)',
        'device means-another B11>B11: text switch, Lift up>switch, Lift down (what was `B11` is `B10` now) (what is `B11` now was `B10`)',
        'device renamed B11>B10: name B11>B10 (for pages with `B11` see what it means now)',
        'device renamed B10>B11: name B10>B11 (for pages with `B10` see what it means now)',
      ],
    ],
  ])('%s', (_, old, now, expected) => check({ devices: old }, { devices: now }, expected))

  test('a new tag, area, address and part at once', () =>
    check(
      { devices: [down, up], signals: ['B10;DI;0.1;X1:1', 'B11;DI;0.2;X1:2'] },
      { devices: ['B90;switch;Lift down;wash;P7;E-1;1', up], signals: ['B90;DI;3.7;X1:1', 'B11;DI;0.2;X1:2'] },
      [
        'device renamed B10>B90: name B10>B90',
        'device re-addressed B10>B90: address 0.1>3.7',
        'device moved B10>B90: area lift>wash',
        'device part-replaced B10>B90: part P1>P7',
      ],
    ))

  test('two texts exchanged, with the addresses left where they were, make two tags mean another', () =>
    check(
      { devices: [down, up], signals: ['B10;DI;0.1;X1:1', 'B11;DI;0.2;X1:2'] },
      { devices: ['B10;switch;Lift up;lift;P1;E-1;1', 'B11;switch;Lift down;lift;P1;E-1;1'], signals: ['B10;DI;0.1;X1:1', 'B11;DI;0.2;X1:2'] },
      [
        'device means-another B10>B10: text switch, Lift down>switch, Lift up (`B10` has the text that `B11` had)',
        'device means-another B11>B11: text switch, Lift up>switch, Lift down (`B11` has the text that `B10` had)',
      ],
    ))
})

describe('signals of a device', () => {
  const devices = [down, up]
  test.each<[string, readonly string[], readonly string[], readonly string[]]>([
    ['another address', ['B10;DI;0.1;X1:1'], ['B10;DI;0.7;X1:1'], ['device re-addressed B10>B10: address 0.1>0.7']],
    ['another terminal', ['B10;DI;0.1;X1:1'], ['B10;DI;0.1;X1:9'], ['device re-terminaled B10>B10: terminal X1:1>X1:9']],
    [
      'two addresses exchanged',
      ['B10;DI;0.1;X1:1', 'B11;DI;0.2;X1:2'],
      ['B10;DI;0.2;X1:1', 'B11;DI;0.1;X1:2'],
      [
        'device re-addressed B10>B10: address 0.1>0.2 (`0.1` belongs to `B11` now)',
        'device re-addressed B11>B11: address 0.2>0.1 (`0.2` belongs to `B10` now)',
      ],
    ],
    [
      'one of two',
      ['B10;DI;0.1;X1:1;a', 'B10;DI;0.2;X1:2;b'],
      ['B10;DI;0.1;X1:1;a', 'B10;DI;0.5;X1:2;b'],
      ['device re-addressed B10>B10: b address 0.2>0.5'],
    ],
    ['one more', ['B10;DI;0.1;X1:1;a'], ['B10;DI;0.1;X1:1;a', 'B10;DO;0.5;X1:2;b'], ['device signal-changed B10>B10: signal >b DO 0.5 X1:2']],
    ['of no device', ['Q9;DI;0.1;X1:1'], ['Q9;DI;0.2;X1:1'], ['signal signal-changed Q9>Q9: address 0.1>0.2']],
    ['of no device, gone', ['Q9;DI;0.1;X1:1'], [], ['signal signal-changed Q9>: signal DI 0.1 X1:1>']],
  ])('%s', (_, old, now, expected) => check({ devices, signals: old }, { devices, signals: now }, expected))
})

describe('the other lists', () => {
  test.each<[string, Lists, Lists, readonly string[]]>([
    ['a part in another quantity', { parts: ['P1;Belt;2'] }, { parts: ['P1;Belt;3'] }, ['part quantity-changed P1>P1: quantity 2>3']],
    [
      'a part with a successor',
      { parts: ['P1;Belt 25;2', 'P2;Belt 32;2'] },
      { parts: ['P1;Belt 25;2;P2', 'P2;Belt 32;2'] },
      ['part superseded P1>P1: supersededBy >P2 (the list replaces `P1` by `P2`)'],
    ],
    [
      'a part with a chain that goes round',
      { parts: ['P1;Belt 25;2', 'P2;Belt 32;2;P1'] },
      { parts: ['P1;Belt 25;2;P2', 'P2;Belt 32;2;P1'] },
      ['part superseded P1>P1: supersededBy >P2 (the list replaces `P1` by `P2`)'],
    ],
    [
      'a part number for something else',
      { parts: ['P1;Belt;2'] },
      { parts: ['P1;Motor starter;2'] },
      ['part means-another P1>P1: text Belt>Motor starter (what was `P1` is gone) (what is `P1` now is new)'],
    ],
    ['a part under a new number', { parts: ['P1;Belt;2'] }, { parts: ['P7;Belt;2'] }, ['part renamed P1>P7: name P1>P7']],
    [
      'a drawing in a new revision',
      { drawings: ['E-1;Lift;schematic;2;A'] },
      { drawings: ['E-1;Lift;schematic;2;B'] },
      ['drawing revision-changed E-1>E-1: revision A>B'],
    ],
    [
      'an alarm with another text',
      { alarms: ['7;Lift slow;stop;B10'] },
      { alarms: ['7;Lift too slow;stop;B10'] },
      ['alarm reworded 7>7: text Lift slow>Lift too slow'],
    ],
    [
      'an alarm with another reaction',
      { alarms: ['7;Lift slow;stop;B10'] },
      { alarms: ['7;Lift slow;hold;B10'] },
      ['alarm reaction-changed 7>7: reaction stop>hold'],
    ],
    [
      'two alarm numbers exchanged',
      { alarms: ['7;Lift slow;stop;B10', '8;Oil low;hold;B12'] },
      { alarms: ['8;Lift slow;stop;B10', '7;Oil low;hold;B12'] },
      [
        'alarm means-another 7>7: text Lift slow>Oil low (what was `7` is `8` now) (what is `7` now was `8`)',
        'alarm means-another 8>8: text Oil low>Lift slow (what was `8` is `7` now) (what is `8` now was `7`)',
        'alarm renamed 8>7: name 8>7 (for pages with `8` see what it means now)',
        'alarm renamed 7>8: name 7>8 (for pages with `7` see what it means now)',
      ],
    ],
    [
      'an energy source with a longer wait',
      { energy: ['bus;Bus;electrical;Q1;60'] },
      { energy: ['bus;Bus;electrical;Q1;300'] },
      ['energy source energy-changed bus>bus: waitS 60>300'],
    ],
    ['an energy source that is gone', { energy: ['bus;Bus;electrical;Q1;60'] }, {}, ['energy source removed bus>']],
    [
      'a format with another value',
      { formats: ['C1;width;Guide width;400;mm'] },
      { formats: ['C1;width;Guide width;410;mm'] },
      ['setting value-changed C1 width>C1 width: value 400>410'],
    ],
    ['a card in another slot', { cards: ['D1;16 inputs;DI;16;2'] }, { cards: ['D1;16 inputs;DI;16;3'] }, ['card moved D1>D1: slot 2>3']],
    [
      'a device whose part the list replaces',
      { devices: [down], parts: ['P1;Switch a;1', 'P2;Switch b;1', 'P3;Switch c;1'] },
      { devices: ['B10;switch;Lift down;lift;P2;E-1;1'], parts: ['P1;Switch a;1;P2', 'P2;Switch b;1;P3', 'P3;Switch c;1'] },
      [
        'device part-replaced B10>B10: part P1>P2 (the list replaces `P1` by `P2` by `P3`)',
        'part superseded P1>P1: supersededBy >P2 (the list replaces `P1` by `P2` by `P3`)',
        'part superseded P2>P2: supersededBy >P3 (the list replaces `P2` by `P3`)',
      ],
    ],
  ])('%s', (_, old, now, expected) => check(old, now, expected))
})

const cells = (...lists: (readonly string[])[]) => fc.tuple(...lists.map((list) => fc.constantFrom(...list))).map((it) => it.join(';'))
const lists = fc.record({
  devices: fc.array(cells(['B1', 'B2', 'B3', 'B4'], ['switch', 'valve'], ['Lift up', 'Lift down', 'Oil'], ['lift', 'wash'], ['P1', 'P2', '']), {
    maxLength: 6,
  }),
  signals: fc.array(cells(['B1', 'B2', 'B3'], ['DI', 'DO'], ['0.1', '0.2', '0.3'], ['X1', 'X2']), { maxLength: 5 }),
  parts: fc.array(cells(['P1', 'P2', 'P3'], ['Belt', 'Motor', 'Belt 2'], ['1', '2'], ['', 'P1', 'P2']), { maxLength: 4 }),
  alarms: fc.array(cells(['1', '2', '3'], ['Lift slow', 'Oil low'], ['stop', 'hold'], ['B1', 'B2', 'B1 B2']), { maxLength: 4 }),
})

describe('what could not be read', () => {
  const place = { file: 'd.csv', line: 3, column: 1, endLine: 3, endColumn: 4 }
  const without = (lists: Lists, table: RecordTable, extent: 'list' | 'rows') => ({ ...records(lists), lost: [{ table, extent, place }] })
  /** The last row of a list, without some of its columns. */
  const damaged = (lists: Lists, table: RecordTable, ...columns: string[]) => {
    const whole = records(lists)
    const rows = whole.tables[table].map((row, index, all) => {
      if (index < all.length - 1) return row
      return { values: Object.fromEntries(Object.entries(row.values).filter(([name]) => !columns.includes(name))), place, unread: columns }
    })
    return { ...whole, tables: { ...whole.tables, [table]: rows } }
  }
  const told = (old: MachineRecords, now: MachineRecords) => {
    const { changes, notCompared } = compareRecords(old, now)
    return [...changes.map(line), ...notCompared.map(({ extent, side, thing, ids }) => `${extent} ${side}: ${thing} ${ids.join(' ')}`.trim())]
  }
  const full = { devices: [down, up, oil] }

  test.each<[string, MachineRecords, MachineRecords, readonly string[]]>([
    ['a whole list', records({ ...full, parts: ['P1;Belt;2'] }), without(full, 'parts', 'list'), ['list new: part']],
    ['a list that is not there any more', records({ parts: ['P1;Belt;2'] }), { ...records({}), unlisted: ['parts'] }, ['no-list new: part']],
    ['a list that was not there', { ...records({}), unlisted: ['parts'] }, records({ parts: ['P1;Belt;2'] }), ['part added >P1']],
    ['the end of a list', records(full), without({ devices: [down] }, 'devices', 'rows'), ['rows new: device', 'unsure new: device B11 B12']],
    ['the end of the old list', without({ devices: [down] }, 'devices', 'rows'), records(full), ['rows old: device', 'unsure old: device B11 B12']],
    [
      'the end of a list in which a tag seems to be new',
      records({ devices: [down] }),
      without({ devices: ['B90;switch;Lift down;lift;P1;E-1;1'] }, 'devices', 'rows'),
      ['unsure old: device B90', 'rows new: device', 'unsure new: device B10'],
    ],
    [
      'the end of a list in which a tag means another',
      records({ devices: [down] }),
      without({ devices: ['B10;float;Oil low;lift;P2;E-1;2'] }, 'devices', 'rows'),
      [
        'device means-another B10>B10: text switch, Lift down>float, Oil low (what was `B10` is not among what could be read of the other revision) (what is `B10` now is new)',
        'rows new: device',
      ],
    ],
    ['a cell of a row', records(full), damaged(full, 'devices', 'sheet'), ['row new: device B12']],
    ['a cell of an old row', damaged(full, 'devices', 'sheet'), records(full), ['row old: device B12']],
    ['the text of a row', records(full), damaged(full, 'devices', 'description'), ['row new: device B12']],
    [
      'a cell of a row with a new tag',
      records(full),
      damaged({ devices: [down, up, 'B90;float;Oil low;lift;P2;E-1;2'] }, 'devices', 'sheet'),
      ['row new: device B90', 'unsure new: device B12'],
    ],
    [
      'the text of a row with a new tag',
      records(full),
      damaged({ devices: [down, up, 'B90;float;Oil low;lift;P2;E-1;2'] }, 'devices', 'description'),
      ['row new: device B90', 'unsure new: device B12'],
    ],
    [
      'a cell of one row, while another is really gone',
      records(full),
      damaged({ devices: [down, oil] }, 'devices', 'sheet'),
      ['device removed B11>', 'row new: device B12'],
    ],
    [
      'an address, while the tag is new',
      records({ devices: [down], signals: ['B10;DI;0.1;X1:1'] }),
      damaged({ devices: ['B90;switch;Lift down;lift;P1;E-1;1'], signals: ['B90;DI;0.1;X1:1'] }, 'signals', 'address'),
      ['device renamed B10>B90: name B10>B90', 'row new: signal B90'],
    ],
    [
      'the end of the I/O list',
      records({ devices: [down, up], signals: ['B10;DI;0.1;X1:1', 'B11;DI;0.2;X1:2'] }),
      without({ devices: [down, up], signals: ['B10;DI;0.7;X1:1'] }, 'signals', 'rows'),
      ['device re-addressed B10>B10: address 0.1>0.7', 'rows new: signal'],
    ],
    [
      'a row of the I/O list',
      records({ devices: [down], signals: ['B10;DI;0.1;X1:1'] }),
      damaged({ devices: [down], signals: ['B10;DI;0.1;X1:9'] }, 'signals', 'type'),
      ['row new: signal B10'],
    ],
    [
      'the end of the device list, with signals of a device in it',
      records({ devices: [down, up], signals: ['B10;DI;0.1;X1:1', 'B11;DI;0.2;X1:2'] }),
      without({ devices: [down], signals: ['B10;DI;0.1;X1:1', 'B11;DI;0.3;X1:2'] }, 'devices', 'rows'),
      ['rows new: device', 'unsure new: device B11'],
    ],
  ])('%s', (_, old, now, expected) => expect(told(old, now)).toEqual(expected))

  test('whatever is lost of a list, what the whole list has is not told as gone', () =>
    fc.assert(
      fc.property(
        lists,
        lists,
        fc.constantFrom('devices', 'parts', 'alarms'),
        fc.nat(5),
        fc.constantFrom('row', 'rows', 'list'),
        (old, now, table, count, extent) => {
          const whole = records(now)
          const rows = whole.tables[table]
          const kept = rows.slice(0, Math.max(0, rows.length - count))
          const [name = ''] = Object.keys(rows[0]?.values ?? {})
          const left =
            extent === 'row' ? rows.map((row) => (kept.includes(row) ? row : { values: { [name]: row.values[name] ?? '' }, unread: ['text'] })) : kept
          const lossy: MachineRecords = {
            ...whole,
            tables: { ...whole.tables, [table]: left },
            lost: extent === 'row' || kept.length === rows.length ? [] : [{ table, extent, place }],
          }
          const there = new Set(rows.map(({ values }) => values[name]))
          const gone = compareRecords(records(old), lossy).changes.filter(
            ({ kind, thing, was }) => things[table] === thing && kind === 'removed' && there.has(was),
          )
          expect(gone).toEqual([])
        },
      ),
    ))
})

describe('what follows a new name is not told again', () => {
  test.each<[string, Lists, Lists, readonly string[]]>([
    [
      'a part number, in devices and the successor of a part',
      { devices: [down, up], parts: ['P1;Switch;2', 'P0;Old switch;0;P1'] },
      { devices: [down, up].map((row) => row.replace('P1', 'P77')), parts: ['P77;Switch;2', 'P0;Old switch;0;P77'] },
      ['part renamed P1>P77: name P1>P77'],
    ],
    [
      'a tag, in alarms',
      { devices: [down, up], alarms: ['7;Lift slow;stop;B10 B11'] },
      { devices: [down, up].map((row) => row.replace('B10', 'B90')), alarms: ['7;Lift slow;stop;B11 B90'] },
      ['device renamed B10>B90: name B10>B90'],
    ],
    [
      'a tag, in an alarm that has one device more',
      { devices: [down, up], alarms: ['7;Lift slow;stop;B10'] },
      { devices: [down, up].map((row) => row.replace('B10', 'B90')), alarms: ['7;Lift slow;stop;B11 B90'] },
      ['device renamed B10>B90: name B10>B90', 'alarm changed 7>7: tags B10>B11 B90'],
    ],
    [
      'a tag, in what isolates an energy source, is told there too',
      { devices: [down], energy: ['bus;Bus;electrical;B10;60'] },
      { devices: [down.replace('B10', 'B90')], energy: ['bus;Bus;electrical;B90;60'] },
      ['energy source energy-changed bus>bus: isolation B10>B90', 'device renamed B10>B90: name B10>B90'],
    ],
  ])('%s', (_, old, now, expected) => check(old, now, expected))
})

test('a name that stands in several rows is not gone with one of them', () =>
  check({ parts: ['P1;Belt;2', 'P1;Motor;1'] }, { parts: ['P1;Belt;2'] }, ['part changed P1>P1: row Motor>']))

describe('laws', () => {
  test('a revision and itself have no change', () =>
    fc.assert(
      fc.property(lists, (it) => {
        check(it, it, [])
      }),
    ))

  test('the order of the rows does not matter', () =>
    fc.assert(
      fc.property(lists, lists, (old, now) => {
        const turned = (it: Lists): Lists => Object.fromEntries(Object.entries(it).map(([name, rows]) => [name, rows.toReversed()]))
        fc.pre(distinctNames(old) && distinctNames(now))
        check(turned(old), turned(now), linesOf(old, now))
      }),
    ))

  test('exchanging old and new makes added removed and turns each new name round', () =>
    fc.assert(
      fc.property(lists, lists, (old, now) => {
        fc.pre(distinctNames(old) && distinctNames(now))
        const fates = (a: Lists, b: Lists) =>
          compareRecords(records(a), records(b)).changes.filter(({ kind }) => ['added', 'removed', 'renamed'].includes(kind))
        const there = fates(old, now).map(({ thing, kind, was, is }) => [thing, kind, was, is])
        const back = fates(now, old).map(({ thing, kind, was, is }) => [
          thing,
          kind === 'added' ? 'removed' : kind === 'removed' ? 'added' : kind,
          is,
          was,
        ])
        expect(back.map(String).sort()).toEqual(there.map(String).sort())
      }),
    ))

  test('n new names on n devices are n renamed devices, chains and exchanges among them', () =>
    fc.assert(
      fc.property(
        fc
          .integer({ min: 1, max: 30 })
          .chain((n) => fc.tuple(fc.constant(n), fc.shuffledSubarray([...Array(60).keys()], { minLength: n, maxLength: n }))),
        ([n, names]) => {
          const device = (tag: number, index: number) => `B${tag};switch;Station ${index + 1} at ${'abcdefghij'[index % 10]};lift;P${index % 3}`
          const old = {
            devices: Array.from({ length: n }, (_, index) => device(index, index)),
            signals: Array.from({ length: n }, (_, index) => `B${index};DI;0.${index};X1:${index}`),
          }
          const now = {
            devices: names.map((name, index) => device(name, index)),
            signals: names.map((name, index) => `B${name};DI;0.${index};X1:${index}`),
          }
          const { changes } = compareRecords(records(old), records(now))
          const renamed = names.flatMap((name, index) => (name === index ? [] : [`device renamed B${index}>B${name}: name B${index}>B${name}`]))
          expect(
            changes
              .filter(({ kind }) => kind !== 'means-another')
              .map((it) => line({ ...it, notes: [] }))
              .sort(),
          ).toEqual(renamed.sort())
          const reused = names.filter((name, index) => name < n && name !== index)
          expect(
            changes
              .filter(({ kind }) => kind === 'means-another')
              .map(({ is }) => is)
              .sort(),
          ).toEqual(reused.map((name) => `B${name}`).sort())
        },
      ),
    ))
})

/** The list has no name twice, as a check would report. */
function distinctNames(it: Lists): boolean {
  return Object.entries(it).every(([table, rows]) => table === 'signals' || new Set(rows.map((row) => row.split(';')[0])).size === rows.length)
}
