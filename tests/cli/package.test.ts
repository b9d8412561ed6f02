import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { unzipSync } from 'fflate'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { brokenLinks } from '../site/built-pages.ts'
import { writeTrainedMachine } from '../trained-machine.ts'
import { schemaFaults } from '../training/packages/schemas.ts'
import { runFettle } from './run-fettle.ts'

const { folder, shared, dir, remove } = writeTrainedMachine()
afterAll(remove)

/** Packs all sequences and gives the zips by name. */
async function packed(out: string, env: NodeJS.ProcessEnv, ...args: string[]): Promise<Record<string, Uint8Array>> {
  const ran = await runFettle(['package', folder, '--shared', shared, '--out', join(dir, out), ...args], env)
  expect(ran).toMatchObject({ code: 0, stdout: '' })
  return Object.fromEntries(readdirSync(join(dir, out)).map((name) => [name, readFileSync(join(dir, out, name))]))
}

function unpacked(zip: Uint8Array | undefined, to: string): string[] {
  const entries = Object.entries(unzipSync(zip ?? new Uint8Array()))
  for (const [path, bytes] of entries) {
    mkdirSync(dirname(join(dir, to, path)), { recursive: true })
    writeFileSync(join(dir, to, path), bytes)
  }
  return entries.map(([path]) => path)
}

describe.each([
  ['cmi5', 'cmi5.xml', 'cmi5'],
  ['scorm-1.2', 'imsmanifest.xml', 'scorm-1.2'],
  ['scorm-2004', 'imsmanifest.xml', 'scorm-2004'],
] as const)('fettle package --format %s', (format, manifest, schema) => {
  let zips: Record<string, Uint8Array> = {}
  let files: string[] = []
  const read = (path: string) => readFileSync(join(dir, `${format}-files`, path), 'utf8')
  beforeAll(async () => {
    zips = await packed(format, { TZ: 'Pacific/Auckland' }, '--format', format)
    files = unpacked(zips[`first-day.${format}.en.zip`], `${format}-files`)
  }, 60_000)

  test('makes a package of each sequence, with a valid manifest at its root', async () => {
    expect(Object.keys(zips)).toEqual([`first-day.${format}.en.zip`, `sensors.${format}.en.zip`])
    expect(files).toContain(manifest)
    expect(await schemaFaults(read(manifest), schema)).toEqual([])
  })

  test('holds the lessons, what they lead to, and nothing that leads out', async () => {
    expect(files.filter((path) => path.endsWith('.html'))).toEqual([
      'glossary.html',
      'launch/look-round.html',
      'launch/stop-and-lock.html',
      'lessons/look-round.html',
      'lessons/stop-and-lock.html',
      'lockout/lo-1.html',
      'tags/PS-101.html',
    ])
    expect(brokenLinks(join(dir, `${format}-files`))).toEqual([])
    expect(read('lessons/stop-and-lock.html')).toContain('href="../lockout/lo-1.html"')
    expect(read('lessons/stop-and-lock.html')).not.toContain('class="rail"')
  })

  test('the launch page knows the form, the lesson and whether questions tell its result', () => {
    expect(read('launch/stop-and-lock.html')).toContain(`data-format="${format}" data-lesson="stop-and-lock"`)
    expect(read('launch/stop-and-lock.html')).not.toContain('data-act="done"')
    expect(read('launch/stop-and-lock.html')).toContain('A person judges the practical part')
    expect(read('launch/look-round.html')).toContain('data-act="done"')
  })

  test('a lesson that is made for devices has their pages', async () => {
    const own = unpacked(zips[`sensors.${format}.en.zip`], `${format}-sensors`)
    expect(own.filter((path) => path.startsWith('checks/'))).toEqual(['checks/check-pressure/PS-101.html', 'checks/check-pressure/PS-102.html'])
    expect(brokenLinks(join(dir, `${format}-sensors`))).toEqual([])
  })

  test('the same folder gives the same bytes, in another place and time zone', async () => {
    expect(await packed(`${format}-again`, { TZ: 'America/Los_Angeles' }, '--format', format)).toEqual(zips)
  }, 60_000)
})

test.each([
  [['--sequence', 'first-dya'], 2, /no sequence `first-dya`; .*first-day/],
  [['--language', 'de'], 2, /not in `de`/],
  [['--format', 'zip'], 2, /--format takes cmi5, scorm-1\.2, scorm-2004/],
])('%j is refused with exit code %i', async (args, code, says) => {
  const ran = await runFettle(['package', folder, '--shared', shared, '--out', join(dir, 'refused'), ...args])
  expect(ran.code).toBe(code)
  expect(ran.stderr).toMatch(says)
})

test('of a folder with errors nothing is packed', async () => {
  const ran = await runFettle(['package', 'tests/fixtures/load', '--out', join(dir, 'errors')])
  expect(ran.code).toBe(1)
  expect(ran.stderr).toContain('not packed: the pages do not agree with the machine')
  expect(readdirSync(dir)).not.toContain('errors')
})
