import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { publish, recover } from '../../src/bundle/publish.ts'
import { verify } from '../../src/bundle/verify.ts'
import { workFolder, writeBundle, writeFiles } from './bundles.ts'

function folders() {
  const dir = workFolder()
  return { dir, staged: join(dir, '.rcw.new'), target: join(dir, 'rcw') }
}

const start = (target: string) => readFileSync(join(target, 'start.html'), 'utf8')

describe('a finished build', () => {
  test('takes an absent place, making the folders above it, then an empty one', () => {
    const { dir, staged } = folders()
    const target = join(dir, 'dist/deep/rcw')
    expect(publish(writeBundle(staged), target)).toEqual({ published: true })
    mkdirSync(join(dir, 'empty'))
    expect(publish(writeBundle(staged), join(dir, 'empty'))).toEqual({ published: true })
    expect([existsSync(join(target, 'start.html')), existsSync(join(dir, 'empty/start.html'))]).toEqual([true, true])
  })

  test('replaces an earlier one whole: no file of that is left, and nothing beside it', async () => {
    const { dir, staged, target } = folders()
    writeBundle(target, { 'start.html': 'earlier', 'tags/gone.html': 'x' })
    writeFileSync(join(target, '.DS_Store'), '')
    expect(publish(writeBundle(staged, { 'start.html': 'new' }), target)).toEqual({ published: true })
    expect(readdirSync(dir)).toEqual(['rcw'])
    expect(await verify(target)).toMatchObject({ changed: [], missing: [], added: [] })
    expect(start(target)).toBe('new')
  })
})

describe('what is not an earlier build is kept', () => {
  const cases: [string, (target: string) => void, string][] = [
    ['a folder of someone else', (target) => writeFiles(target, { 'thesis.txt': 'x' }), 'is not an earlier build and is left as it is'],
    ['a manifest of another program', (target) => writeFiles(target, { 'manifest.json': '{"format":"app"}' }), 'has the format `app`'],
    [
      'an earlier build with files added to it',
      (target) => writeFiles(writeBundle(target), { 'my/notes.txt': 'x', 'z.txt': '' }),
      'holds `my/notes.txt` and 1 more',
    ],
    ['a file', (target) => writeFileSync(target, 'x'), 'is a file or a link'],
    ['a link to an earlier build', (target) => symlinkSync(writeBundle(`${target}-elsewhere`), target), 'is a file or a link'],
  ]
  test.each(cases)('%s', (_, prepare, refusal) => {
    const { dir, staged, target } = folders()
    prepare(target)
    writeBundle(staged)
    const before = readdirSync(dir, { recursive: true }).sort()
    expect(publish(staged, target)).toEqual({ refused: expect.stringContaining(refusal) })
    expect(readdirSync(dir, { recursive: true }).sort()).toEqual(before)
  })
})

test('an unfinished build is not published', () => {
  const { staged, target } = folders()
  writeBundle(target, { 'start.html': 'earlier' })
  writeFiles(staged, { 'start.html': 'half' })
  expect(publish(staged, target)).toEqual({ refused: expect.stringContaining('is not finished: its `manifest.json` cannot be read') })
  expect(start(target)).toBe('earlier')
})

test('a build inside the place it is to take is refused', () => {
  const { target } = folders()
  writeBundle(join(target, 'new'))
  expect(publish(join(target, 'new'), target)).toEqual({ refused: expect.stringContaining('lie inside each other') })
})

test('a stranger under the name for the earlier build is not removed', () => {
  const { dir, staged, target } = folders()
  writeBundle(staged)
  writeFiles(dir, { '.rcw.earlier/mine.txt': 'x' })
  expect(publish(staged, target)).toEqual({ refused: expect.stringContaining('.rcw.earlier` is in the way') })
  expect(existsSync(join(dir, '.rcw.earlier/mine.txt'))).toBe(true)
})

/** Publishes in a process of its own that is killed right after the given call, counted from 1, to a function of node:fs. */
function publishKilled(staged: string, target: string, after: 'renameSync' | 'rmSync', count: number): string | null {
  const module = JSON.stringify(new URL('../../src/bundle/publish.ts', import.meta.url).href)
  const script = `
    import fs from 'node:fs'
    import { syncBuiltinESMExports } from 'node:module'
    const real = fs.${after}
    let calls = 0
    fs.${after} = (...args) => { real(...args); if (++calls === ${count}) process.kill(process.pid, 'SIGKILL') }
    syncBuiltinESMExports()
    const { publish } = await import(${module})
    publish(...${JSON.stringify([staged, target])})`
  return spawnSync(process.execPath, ['--input-type=module', '--eval', script]).signal
}

describe('a publication that is killed', () => {
  test('between the two moves: the earlier build comes back, then the next one is published', async () => {
    const { dir, staged, target } = folders()
    writeBundle(target, { 'start.html': 'earlier' })
    expect(publishKilled(writeBundle(staged, { 'start.html': 'new' }), target, 'renameSync', 1)).toBe('SIGKILL')
    expect(existsSync(target)).toBe(false)
    expect(recover(target)).toEqual({ recovered: true })
    expect(start(target)).toBe('earlier')
    expect(await verify(target)).toMatchObject({ changed: [], missing: [], added: [] })
    expect(publish(staged, target)).toEqual({ published: true })
    expect(start(target)).toBe('new')
    expect(readdirSync(dir)).toEqual(['rcw'])
  })

  test('between the two moves, and someone made the folder again: it still comes back', () => {
    const { staged, target } = folders()
    writeBundle(target, { 'start.html': 'earlier' })
    expect(publishKilled(writeBundle(staged), target, 'renameSync', 1)).toBe('SIGKILL')
    mkdirSync(target)
    expect(recover(target)).toEqual({ recovered: true })
    expect(start(target)).toBe('earlier')
  })

  test.each([
    ['renameSync', 2],
    ['renameSync', 3],
    ['rmSync', 1],
    ['rmSync', 2],
  ] as const)('after %s %i: the new build is in place, the rest of the earlier one goes with the next start', (call, count) => {
    const { dir, staged, target } = folders()
    writeBundle(target, { 'start.html': 'earlier', 'tags/a.html': '' })
    expect(publishKilled(writeBundle(staged, { 'start.html': 'new' }), target, call, count)).toBe('SIGKILL')
    expect(start(target)).toBe('new')
    expect(readdirSync(dir)).toHaveLength(2)
    expect(recover(target)).toEqual({ recovered: false })
    expect(start(target)).toBe('new')
    expect(readdirSync(dir)).toEqual(['rcw'])
  })

  test('nothing to recover is no fault', () => {
    const { target } = folders()
    expect(recover(target)).toEqual({ recovered: false })
  })
})
