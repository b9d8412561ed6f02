import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { runFettle, startFettle } from './run-fettle.ts'

let dir: string
let out: string
beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  out = join(dir, 'one/rcw-400')
  const ran = await runFettle(['build', 'example-machine', '--out', out], { TZ: 'America/Los_Angeles' })
  expect(ran).toMatchObject({ code: 0, stdout: '' })
}, 120_000)
afterAll(() => rmSync(dir, { recursive: true, force: true }))

const manifest = (folder: string) => readFileSync(join(folder, 'manifest.json'), 'utf8')

describe('fettle build', () => {
  test('the same machine in another folder, at another place, in another time zone and with nothing kept gives the same bytes', async () => {
    const copy = join(dir, 'elsewhere/machine')
    cpSync('example-machine', copy, { recursive: true })
    const other = join(dir, 'two/deeper/rcw-400')
    expect(await runFettle(['build', copy, '--no-cache', '--out', other], { TZ: 'Pacific/Auckland', LANG: 'tr_TR.UTF-8' })).toMatchObject({ code: 0 })
    expect(manifest(other)).toBe(manifest(out))
    expect(readFileSync(`${other}.zip`).equals(readFileSync(`${out}.zip`))).toBe(true)
  })

  test('one changed word changes its own page, the search and what names the release, and nothing else', async () => {
    const copy = join(dir, 'changed')
    cpSync('example-machine', copy, { recursive: true })
    const page = join(copy, 'pages/front/technical-data.mdx')
    writeFileSync(page, readFileSync(page, 'utf8').replace('2900 kg', '2950 kg'))
    const other = join(dir, 'three/rcw-400')
    expect(await runFettle(['build', copy, '--out', other, '--no-zip'])).toMatchObject({ code: 0 })
    const before = new Map(files(out))
    const changed = files(other)
      .filter(([path, hash]) => before.get(path) !== hash)
      .map(([path]) => path)
    // A page with the search names the build check value, so that a browser never mixes two indexes.
    expect(changed.filter((path) => !path.startsWith('search/'))).toEqual([
      'about.html',
      'es/about.html',
      'es/front/technical-data.html',
      'es/index.html',
      'es/search.html',
      'front/technical-data.html',
      'index.html',
      'search.html',
    ])
  })

  test('a build for one serial number leaves out what does not fit it', async () => {
    const other = join(dir, 'four/rcw-400')
    mkdirSync(dirname(other), { recursive: true })
    cpSync(`${out}.zip`, `${other}.zip`)
    expect(await runFettle(['build', 'example-machine', '--serial', '0400-023', '--out', other, '--no-zip'])).toMatchObject({ code: 0 })
    // A zip of an earlier build beside the new folder would be taken for its zip.
    expect(existsSync(`${other}.zip`)).toBe(false)
    expect(existsSync(join(out, 'tags/MTR601.html'))).toBe(true)
    expect(existsSync(join(other, 'tags/MTR601.html'))).toBe(false)
    expect(existsSync(join(other, 'tags/SOL231.html'))).toBe(true)
    expect(readFileSync(join(out, 'procedures/set-up-crate-format.html'), 'utf8')).toContain('upper air knife')
    expect(readFileSync(join(other, 'procedures/set-up-crate-format.html'), 'utf8')).not.toContain('air knife')
    expect(readFileSync(join(other, 'lockout/lo-1.html'), 'utf8')).not.toContain('Coasting')
  })

  test('a folder with errors is refused, and the earlier build stays whole', async () => {
    const broken = join(dir, 'broken')
    cpSync('example-machine', broken, { recursive: true })
    writeFileSync(join(broken, 'pages/front/safety.mdx'), '---\ntitle: Safety\n---\nSee <Tag id="NO-1" />.\n')
    const before = manifest(out)
    const ran = await runFettle(['build', broken, '--out', out])
    expect(ran.code).toBe(1)
    expect(ran.stdout).toContain('no device has the tag `NO-1`')
    expect(manifest(out)).toBe(before)
    expect(await runFettle(['verify', out])).toMatchObject({ code: 0 })
  })

  test.each([700, 2500, 4000])('a build that is killed after %i ms leaves the earlier one whole', async (afterMs) => {
    const before = manifest(out)
    const child = startFettle(['build', 'example-machine', '--serial', '0400-023', '--out', out])
    const ended = new Promise((done) => child.on('close', done))
    await new Promise((done) => setTimeout(done, afterMs))
    child.kill('SIGKILL')
    await ended
    if (manifest(out) === before) expect(await runFettle(['verify', out])).toMatchObject({ code: 0, stdout: `${out}: whole, as it was built\n` })
    else expect(JSON.parse(manifest(out))).toMatchObject({ machine: { serial: '0400-023' } })
  })

  test('what killed builds left is taken away by the next', async () => {
    expect(await runFettle(['build', 'example-machine', '--out', out])).toMatchObject({ code: 0 })
    expect(readdirSync(join(out, '..')).sort()).toEqual(['rcw-400', 'rcw-400.zip'])
  })

  test('a folder of somebody else is never replaced', async () => {
    const own = join(dir, 'own')
    mkdirSync(own)
    writeFileSync(join(own, 'README.txt'), 'mine')
    const ran = await runFettle(['build', 'example-machine', '--out', own, '--no-zip'])
    expect(ran.code).toBe(2)
    expect(readdirSync(own)).toEqual(['README.txt'])
  })

  test('the list of links names every alarm, tag, part and drawing with a page that is there', () => {
    const { links }: { links: { kind: string; id: string; language: string; path: string }[] } = JSON.parse(
      readFileSync(join(out, 'links.json'), 'utf8'),
    )
    const rows = readFileSync(join(out, 'links.csv'), 'utf8').trim().split('\r\n')
    expect(rows[0]).toBe('kind,id,language,path')
    expect(rows.length - 1).toBe(links.length)
    for (const { path } of links) expect(existsSync(join(out, path)), path).toBe(true)
    const count = (kind: string) => links.filter((link) => link.kind === kind && link.language === 'en').length
    expect([count('alarm'), count('tag'), count('part')]).toEqual([18, 125, 153])
    expect(new Set(links.map(({ kind, id, language }) => `${kind} ${id} ${language}`)).size, 'each name once').toBe(links.length)
    expect(links).toContainEqual({ kind: 'alarm', id: 'A0201', language: 'en', path: 'alarms/A0201.html' })
  })
})

describe('fettle changes', () => {
  test('a release and the folder that it was built from say the same, from a folder and from its zip', async () => {
    for (const release of [out, `${out}.zip`]) {
      const { code, stdout } = await runFettle(['changes', release, 'example-machine'])
      expect(code).toBe(0)
      expect(stdout).toMatch(/\n0 changes; 0 pages of the new revision speak of them\n$/)
    }
    expect((await runFettle(['changes', out, `${out}.zip`])).stdout).toContain('a release holds no source of its pages')
  })
})

describe('fettle verify', () => {
  test('names what was changed, lost and added', async () => {
    const copy = join(dir, 'tampered')
    cpSync(out, copy, { recursive: true })
    writeFileSync(join(copy, 'index.html'), 'x')
    rmSync(join(copy, 'about.html'))
    writeFileSync(join(copy, 'new.html'), 'x')
    const ran = await runFettle(['verify', copy])
    expect(ran.code).toBe(1)
    expect(ran.stdout.split('\n').slice(0, 3)).toEqual(['changed  index.html', 'missing  about.html', 'added    new.html'])
  })

  test('takes the zip as well, and says what is no build', async () => {
    expect(await runFettle(['verify', `${out}.zip`])).toMatchObject({ code: 0 })
    expect(await runFettle(['verify', 'tests'])).toMatchObject({ code: 2 })
  })
})

function files(folder: string): [string, string][] {
  const { files }: { files: { path: string; sha256: string }[] } = JSON.parse(manifest(folder))
  return files.map(({ path, sha256 }) => [path, sha256])
}
