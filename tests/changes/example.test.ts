import { describe, expect, test } from 'vitest'
import { compareRecords } from '../../src/changes/compare-records.ts'
import { readDataFile, writeDataFile } from '../../src/changes/data-file.ts'
import { recordsOf } from '../../src/changes/records-of.ts'
import { speakingPages } from '../../src/changes/speaking-pages.ts'
import { diskFolder, type Folder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { Machine } from '../../src/model/machine.ts'
import { line } from './records.ts'
import { edits, revised } from './revised-example.ts'

const shared = diskFolder('content', 'content/')

function load(folder: Folder): readonly [Machine, ...Machine[]] {
  const [first, ...rest] = loadMachine(folder, shared).machines
  if (!first) throw new Error('the folder is no machine')
  return [first, ...rest]
}

const [old, now] = [load(diskFolder('example-machine', '')), load(revised(edits))]
const { changes } = compareRecords(recordsOf(old), recordsOf(now))
const pages = speakingPages(changes, now, old)

/** Pages with their relation and their lines, of the change that has these first words. */
function speaking(start: string): string[] {
  const index = changes.findIndex((change) => line(change).startsWith(start))
  expect(index, start).toBeGreaterThanOrEqual(0)
  return (pages[index] ?? []).map(
    ({ page, relation, places }) => `${page} ${relation} ${places.map(({ language, place }) => `${language}:${place.line}`).join(' ')}`,
  )
}

describe('a revised copy of the example machine', () => {
  test('every known change is told, and nothing else', () => {
    expect(changes.map(line)).toEqual([
      'alarm means-another A0301>A0301: text No pre-wash water>Wash tank level low (what was `A0301` is `A0399` now) (what is `A0301` now was `A0401`)',
      'device means-another PRS204>PRS204: text inductive proximity switch, Lift at the bottom position>inductive proximity switch, Lift at the top position (what was `PRS204` is `PRS205` now) (what is `PRS204` now was `PRS205`)',
      'device means-another PRS205>PRS205: text inductive proximity switch, Lift at the top position>inductive proximity switch, Lift at the bottom position (what was `PRS205` is `PRS204` now) (what is `PRS205` now was `PRS204`)',
      'part means-another 1010-0110>1010-0110: text Belt scraper>Oil pump for the lift chain (what was `1010-0110` is gone) (what is `1010-0110` now is new)',
      'energy source energy-changed dc-bus>dc-bus: waitS 300>420',
      'hazard hazard-changed mains-water>mains-water: accident >could, injury >could, severity minor-or-moderate-injury>death-or-serious-injury, signalWord caution>warning',
      'hazard hazard-changed noise>noise: consequence The noise could damage your hearing for good.>The noise could make you deaf.',
      'hazard hazard-changed wet-floor>wet-floor: symbols W011>M008 W011',
      'part removed 0012-0100>',
      'alarm renamed A0401>A0301: name A0401>A0301',
      'alarm renamed A0301>A0399: name A0301>A0399 (for pages with `A0301` see what it means now)',
      'device renamed CB201>CB209: name CB201>CB209',
      'device renamed PRS205>PRS204: name PRS205>PRS204 (for pages with `PRS205` see what it means now)',
      'device renamed PRS204>PRS205: name PRS204>PRS205 (for pages with `PRS204` see what it means now)',
      'part renamed 3110-0309>3110-0388: name 3110-0309>3110-0388',
      'device re-addressed LS207>LS207: address %IX0.6>%IX3.7',
      'device re-terminaled MCS214>MCS214: terminal X2:9>X2:32',
      'device moved LS206>LS206: place lift frame, left post, cam rail>lift frame, right post, cam rail, x 346>360',
      'device drawing-changed HV225>HV225: drawing P-201>W-301',
      'drawing revision-changed E-104>E-104: revision C>D',
      'device part-replaced CDT417>CDT417: part 4466-0005>4466-0007',
      'part superseded 1030-0039>1030-0039: supersededBy 1030-0040>1030-0052 (the list replaces `1030-0039` by `1030-0052`)',
      'alarm reaction-changed A0102>A0102: reaction stop>hold',
      'device signal-changed FS232>FS232: contact NO>NC',
      'alarm reworded A0203>A0203: text Clamp not closed>Clamp did not close',
      'card reworded TC1>TC1: description 2 inputs for thermocouples, with cold junction>2 inputs for thermocouples, with a cold junction inside',
      'device reworded PI224>PI224: description Air pressure in the clamp>Pressure of the air in the clamp',
      'part quantity-changed 1020-0215>1020-0215: quantity 8>6',
      'setting value-changed C6420 lift-step>C6420 lift-step: value 186>190',
      'device added >LED209',
    ])
  })

  test('the pages that speak of an exchanged tag', () =>
    expect(speaking('device means-another PRS204')).toEqual([
      'alarms/a0201-lift-position names es:9 es:20 es:21 es:31 es:34 es:35 es:50 en:17 en:28 en:29 en:39 en:42 en:43 en:58',
      'alarms/a0202-lift-past-limit names en:37 en:38',
      'components/destacking-lift names en:5 en:12',
      'lessons/check-inductive lesson en:7',
      'lessons/recover-lift-stops names es:47 es:74 es:107 en:16 en:69 en:94 en:127',
    ]))
  test('the pages that speak of a tag that is gone', () =>
    expect(speaking('device renamed CB201')).toEqual(['alarms/a0201-lift-position names es:38 en:46']))
  test('the lockouts of an energy source', () =>
    expect(speaking('energy source energy-changed dc-bus')).toEqual(['lockout/lo-1 names es:90 en:8 en:88', 'lockout/lo-5 names es:37 en:8 en:33']))
  test('the pages of a hazard', () => {
    expect(speaking('hazard hazard-changed mains-water')).toEqual([
      'lessons/lock-out-the-tanks names es:69 en:82',
      'lockout/lo-1 names es:70 en:68',
      'lockout/lo-3 names es:29 en:25',
      'lockout/lo-4 names es:27 en:23',
    ])
  })
  test('the pages of a number that another alarm has', () =>
    expect(speaking('alarm means-another A0301')).toEqual([
      'alarms/a0301-no-prewash-water names en:4',
      'lessons/recover-water-heat-air names es:72 en:15 en:84',
    ]))
  test('the pages that show a part with a new number', () =>
    expect(speaking('part renamed 3110-0309')).toEqual([
      'alarms/a0202-lift-past-limit names en:41',
      'lessons/lift-chain-and-brake names es:47 en:60',
      'procedures/lift-rollers-and-brake names en:50',
    ]))
  test('the lockouts that cover the area of a new device', () =>
    expect(speaking('device added')).toEqual(['lessons/check-lamp lesson en:7', 'lockout/lo-1 area-lockout en:9', 'lockout/lo-2 area-lockout en:9']))
  test('the pages of a number that moved to another alarm', () =>
    expect(speaking('alarm renamed A0401')).toEqual([
      'alarms/a0401-wash-level-low names en:4',
      'lessons/recover-water-heat-air names es:36 es:73 en:15 en:44 en:85',
    ]))
  test('a renamed device whose tag is reused leaves its pages to that tag', () => expect(speaking('device renamed PRS204')).toEqual([]))

  test('every place holds the name', () => {
    const texts = loadMachine(revised(edits), shared).texts
    changes.forEach((change, index) => {
      const name = change.kind === 'renamed' || change.kind === 'removed' ? change.was : change.is
      for (const { relation, places } of pages[index] ?? []) {
        if (relation !== 'names') continue
        for (const { place } of places) {
          const shown = texts
            .get(place.file)
            ?.split('\n')
            [place.line - 1]?.slice(place.column - 1, place.endColumn - 1)
          expect([name, ...change.details.map(({ was }) => was)]).toContain(shown)
        }
      }
    })
  })
})

test('the data file of a release gives the same changes, without places', () => {
  const read = readDataFile(writeDataFile(recordsOf(old)))
  if ('problem' in read) throw new Error(read.problem)
  const same = compareRecords(read.records, recordsOf(now)).changes
  expect(same.map(line)).toEqual(changes.map(line))
  expect(same.every(({ oldPlace }) => oldPlace === undefined)).toBe(true)
})

test('a release of before, which held no hazards and no checkout data, says nothing of them', () => {
  const older = writeDataFile(recordsOf(old))
    .replace('fettle-data-4', 'fettle-data-2')
    .replace(/,\n {2}"hazards": \[[\s\S]*?\n {2}\]/, '')
    .replace(/,\n {2}"checkout": \[[\s\S]*?\n {2}\]/, '')
  expect(older).not.toContain('RA-400')
  const read = readDataFile(older)
  if ('problem' in read) throw new Error(read.problem)
  const { changes: told, notCompared } = compareRecords(read.records, recordsOf(now))
  expect(told.map(line)).toEqual(changes.filter(({ thing }) => thing !== 'hazard').map(line))
  expect(notCompared).toMatchObject([
    { thing: 'hazard', extent: 'list', side: 'old' },
    { thing: 'checkout item', extent: 'list', side: 'old' },
  ])
})

test('another limit is told with its devices, and with the lessons that are made for them', () => {
  const checkout = 'data/checkout.yaml'
  const edited = load(
    revised({
      [checkout]: [
        ['lowestV: 22.8', 'lowestV: 21.6'],
        ['ratedDistanceMm: 8', 'ratedDistanceMm: 6'],
        ['setBar: 4.5, deadBandBar: 0.3', 'setBar: 4.2, deadBandBar: 0.3'],
        [
          '  4491-0003:\n    technology: lamp\n    from: data sheet\n    ratedV: 24\n    ratedW: 1.2\n    lowestShare: 0.85\n    highestShare: 1.1\n',
          '',
        ],
      ],
    }),
  )
  const told = compareRecords(recordsOf(old), recordsOf(edited)).changes
  expect(told.map(line)).toEqual([
    'checkout item removed part 4491-0003> (it holds for `LT056`)',
    'checkout item value-changed device PS906>device PS906: setBar 4.5 (measured)>4.2 (measured)',
    'checkout item value-changed part 4410-0112>part 4410-0112: ratedDistanceMm 8 (data sheet)>6 (data sheet) (it holds for `PRS204`, `PRS205`)',
    'checkout item value-changed supply 24V>supply 24V: lowestV 22.8 (data sheet)>21.6 (data sheet) (it holds for `CB411`, `CB511`, `CB601`, `CDT417`, `CON041`, `CON042` and 73 more)',
  ])
  const spoken = speakingPages(told, edited, old).map((own) => own.map(({ page, relation }) => `${page} ${relation}`))
  expect(spoken[2]).toContain('lessons/check-inductive lesson')
  expect(spoken[1]?.some((page) => page.endsWith('names'))).toBe(true)
})

test('data under the new name of a device are the same data', () => {
  const edited = load(
    revised({
      'data/devices.csv': [['\nLS206,', '\nLS296,']],
      'data/io-list.csv': [[',LS206,', ',LS296,']],
      'data/checkout.yaml': [['  LS206: ', '  LS296: ']],
    }),
  )
  const told = compareRecords(recordsOf(old), recordsOf(edited)).changes
  expect(told.map(line)).toEqual(['device renamed LS206>LS296: name LS206>LS296'])
})

test('every value is told in words that stand in the data', () => {
  for (const rows of Object.values(recordsOf(old).tables))
    for (const { values } of rows) expect(JSON.stringify(values)).not.toMatch(/\[object|undefined|NaN/)
})

test('another unit of an energy source is told', () => {
  const revision = load(revised({ 'data/energy.yaml': [['value: 566, unit: V', 'value: 566, unit: mV']] }))
  expect(compareRecords(recordsOf(old), recordsOf(revision)).changes.map(line)).toEqual([
    'energy source energy-changed dc-bus>dc-bus: magnitude 566 V, 940 µF>566 mV, 940 µF',
  ])
})

test('the example machine and itself have no change', () => {
  expect(compareRecords(recordsOf(old), recordsOf(load(diskFolder('example-machine', '')))).changes).toEqual([])
})
