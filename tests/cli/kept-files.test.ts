import { mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeEach, expect, test } from 'vitest'
import { keptFilesIn } from '../../src/cli/kept-files.ts'

const home = mkdtempSync(join(tmpdir(), 'fettle-'))
let dir = ''
let count = 0
beforeEach(() => {
  count += 1
  dir = join(home, String(count), 'made')
})
afterAll(() => rmSync(home, { recursive: true }))

const text = (made: Uint8Array | undefined) => made && new TextDecoder().decode(made)
const files = () => readdirSync(dir).map((name) => join(dir, name))

test('a value is given back for all that it was made of, and for nothing else', () => {
  const kept = keptFilesIn(dir, 'tool 1')
  expect(kept.get(['sheet', 'abc', '1'])).toBeUndefined()
  kept.set(['sheet', 'abc', '1'], Buffer.from('drawn'))
  kept.set(['sheet', 'abc', '2'], Buffer.from('drawn too'))
  expect(text(keptFilesIn(dir, 'tool 1').get(['sheet', 'abc', '1']))).toBe('drawn')
  expect(kept.get(['sheet', 'abc1', ''])).toBeUndefined()
  expect(keptFilesIn(dir, 'tool 2').get(['sheet', 'abc', '1'])).toBeUndefined()
})

test.each([
  ['cut short', (bytes: Buffer) => bytes.subarray(0, -1)],
  ['empty', () => Buffer.of()],
  ['of other bytes', (bytes: Buffer) => Buffer.concat([bytes.subarray(0, -1), Buffer.from('!')])],
])('a file that is %s is not given back', (_what, damage) => {
  const kept = keptFilesIn(dir, 'tool')
  kept.set(['photo'], Buffer.from('picture'))
  const [file = ''] = files()
  writeFileSync(file, damage(readFileSync(file)))
  expect(kept.get(['photo'])).toBeUndefined()
})

test('what nobody has asked for in a month is removed, and what was used stays', () => {
  const kept = keptFilesIn(dir, 'tool')
  kept.set(['used'], Buffer.from('used'))
  kept.set(['not used'], Buffer.from('not used'))
  const monthAgo = Date.now() / 1000 - 31 * 24 * 3600
  for (const file of files()) utimesSync(file, monthAgo, monthAgo)
  kept.get(['used'])
  keptFilesIn(dir, 'tool').set(['new'], Buffer.from('new'))
  expect(files()).toHaveLength(2)
  expect(text(kept.get(['used']))).toBe('used')
})

test('a folder that cannot be made keeps nothing and stops nothing', () => {
  const file = join(home, 'file')
  writeFileSync(file, '')
  const kept = keptFilesIn(join(file, 'made'), 'tool')
  kept.set(['photo'], Buffer.from('picture'))
  expect(kept.get(['photo'])).toBeUndefined()
})
