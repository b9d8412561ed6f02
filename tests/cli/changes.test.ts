import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { writeManifest } from '../../src/bundle/manifest.ts'
import { writeDataFile } from '../../src/changes/data-file.ts'
import { recordsOf } from '../../src/changes/records-of.ts'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import type { Machine } from '../../src/model/machine.ts'
import { identity, writeFiles } from '../bundle/bundles.ts'
import { edits, revised } from '../changes/revised-example.ts'
import { runFettle } from './run-fettle.ts'

let dir: string
let now: string
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-changes-'))
  now = join(dir, 'new')
  const folder = revised(edits)
  for (const path of folder.list()) {
    mkdirSync(dirname(join(now, path)), { recursive: true })
    writeFileSync(join(now, path), folder.read(path))
  }
})
afterAll(() => rmSync(dir, { recursive: true, force: true }))

function unitOf(serial: string): Machine {
  const [machine] = loadMachine(diskFolder('example-machine', ''), diskFolder('content', '')).machines.filter(({ unit }) => unit.serial === serial)
  if (!machine) throw new Error(`no unit ${serial}`)
  return machine
}

/** A copy of the example machine with one text replaced. */
function copyWith(name: string, path: string, was: string, is: string): string {
  const copy = join(dir, name)
  cpSync('example-machine', copy, { recursive: true })
  const text = readFileSync(join(copy, path), 'utf8')
  expect(text).toContain(was)
  writeFileSync(join(copy, path), text.replace(was, is))
  return copy
}

describe('fettle changes', () => {
  test('tells the changes as text', async () => {
    const { code, stdout, stderr } = await runFettle(['changes', 'example-machine', now])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(stdout).toMatch(/device `PRS204` now means another device\n/)
    expect(stdout).toMatch(
      /\n30 changes, 4 names now mean another thing, 1 change of energy sources, 3 changes of hazards; \d+ pages of the new revision speak of them\n$/,
    )
  })

  test('as JSON, for one unit: what does not fit it is left out', async () => {
    const of = async (serial: string) =>
      JSON.parse((await runFettle(['changes', 'example-machine', now, '--format', 'json', '--serial', serial])).stdout).changes
    const names = (changes: { is: string | null }[]) => changes.map(({ is }) => is)
    expect(names(await of('0400-023'))).toContain('FS232')
    expect(names(await of('0400-017'))).not.toContain('FS232')
  })

  test('as a page in one file with its fonts', async () => {
    const out = join(dir, 'changes.html')
    expect(await runFettle(['changes', 'example-machine', now, '--format', 'html', '--out', out])).toEqual({ code: 0, stdout: '', stderr: '' })
    const page = readFileSync(out, 'utf8')
    expect(page.match(/data:font\/woff2/g)).toHaveLength(3)
    expect(page).not.toMatch(/url\((?!"?data:)|<script|https?:/)
  })

  test('a page that cannot be read is named, and the rest is compared', async () => {
    const copy = copyWith('broken-page', 'pages/front/safety.mdx', 'title:', 'title')
    const { code, stdout } = await runFettle(['changes', 'example-machine', copy])
    expect(code).toBe(0)
    expect(stdout).toContain('pages/front/safety.mdx:')
    expect(stdout).toContain('so what it speaks of is not told')
  })

  test('a row that cannot be read is not told as gone', async () => {
    const copy = copyWith('broken-row', 'data/bom.csv', 'Rodillo guía del carro del elevador,8,', 'Rodillo guía del carro del elevador,many,')
    const { code, stdout } = await runFettle(['changes', 'example-machine', copy])
    expect(code).toBe(0)
    expect(stdout).toContain('not compared: part `1020-0215`, which the new revision could not give')
    expect(stdout).toMatch(/\n0 changes; /)
  })

  test('a quote that is never closed hides the rest of a list, and nothing in it is told as gone', async () => {
    const copy = copyWith('broken-quote', 'data/alarms.csv', '\nA0502;', '\nA0502;"')
    const { code, stdout } = await runFettle(['changes', 'example-machine', copy])
    expect(code).toBe(0)
    expect(stdout).toMatch(/not compared: a part of the list of alarms, which the new revision could not give \(.*data\/alarms.csv:\d+:1\)\n/)
    expect(stdout).toMatch(/not told as gone or renamed: alarms `A0502`, `.*, because of what could not be read\n/)
    expect(stdout).toMatch(/\n0 changes; /)
  })

  test.each(['signals', 'parts', 'formats', 'cards', 'energy'])(
    'a list of %s that is not there is named, and nothing in it is told as gone',
    async (list) => {
      const file = { signals: 'io-list.csv', parts: 'bom.csv', formats: 'formats.csv', cards: 'cards.csv', energy: 'energy.yaml' }[list] ?? ''
      const copy = join(dir, `without-${list}`)
      cpSync('example-machine', copy, { recursive: true })
      rmSync(join(copy, 'data', file))
      const { code, stdout } = await runFettle(['changes', 'example-machine', copy])
      expect(code).toBe(0)
      expect(stdout).toContain('not compared: the list of ')
      expect(stdout).toMatch(/\n0 changes; /)
    },
  )

  test.each([
    [['example-machine', 'nowhere'], /nowhere\/machine.yaml:1:1: |the machine folder cannot be read/],
    [['example-machine', 'tests'], /tests\/machine.yaml:1:1: the folder has no `machine.yaml`/],
    [['example-machine', 'README.md'], /README.md: not a whole zip file/],
    [['example-machine'], /<new folder or release> is missing/],
    [['example-machine', 'example-machine', '--serial', '9'], /no unit with the serial number `9`/],
    [['example-machine', 'example-machine', '--out', 'no/such/folder/x.html'], /cannot be written/],
  ])('%j could not run', async (args, says) => {
    const { code, stderr } = await runFettle(['changes', ...args])
    expect(code).toBe(2)
    expect(stderr).toMatch(says)
  })

  test('a release is compared with its own unit, or with the one that is asked for', async () => {
    const files = { 'data.json': writeDataFile(recordsOf([unitOf('0400-017')], undefined, '0400-017')) }
    const release = writeFiles(join(dir, 'unit-17'), files)
    writeManifest(release, identity)
    const same = (await runFettle(['changes', release, 'example-machine'])).stdout
    expect(same).toContain('compared is what fits serial no. `0400-017`\n')
    expect(same).toMatch(/\n0 changes; /)
    const other = copyWith('other-serials', 'machine.yaml', '0400-017', '0400-099')
    const { code, stderr } = await runFettle(['changes', release, other])
    expect(code).toBe(2)
    expect(stderr).toContain('has no unit with the serial number `0400-017`; name one that both revisions have with --serial')
    const asked = (await runFettle(['changes', release, other, '--serial', '0400-099'])).stdout
    expect(asked).toContain('compared is what fits serial no. `0400-017` in the old revision and `0400-099` in the new one\n')
    expect(asked).toMatch(/\n0 changes; /)
    const unlike = (await runFettle(['changes', release, other, '--serial', '0400-023'])).stdout
    expect(unlike).toContain('the units carry other options')
    expect(unlike).toContain('is in the list still, for no option of these units')
    expect(unlike).not.toContain('is gone')
  })

  test('a release without the data of its machine could not be compared', async () => {
    const release = writeFiles(join(dir, 'release'), { 'index.html': 'x' })
    writeManifest(release, identity)
    const { code, stderr } = await runFettle(['changes', release, 'example-machine'])
    expect(code).toBe(2)
    expect(stderr).toContain('it holds no `data.json`: an older version built it; compare with the folder that it was built from')
  })

  test('a release whose data was edited could not be compared', async () => {
    const release = writeFiles(join(dir, 'edited'), { 'data.json': '{}' })
    writeManifest(release, identity)
    expect((await runFettle(['changes', release, 'example-machine'])).stderr).toContain('not in the form `fettle-data-4`')
    writeFileSync(join(release, 'data.json'), '{ }')
    expect((await runFettle(['changes', release, 'example-machine'])).stderr).toContain('its `data.json` is not as it was built')
  })
})
