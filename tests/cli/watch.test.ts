import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { startFettle } from './run-fettle.ts'

let dir: string
let machine: string
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-watch-'))
  machine = join(dir, 'machine')
  cpSync('tests/fixtures/sound-machine', machine, { recursive: true })
  mkdirSync(join(dir, 'content'))
})
afterEach(() => rmSync(dir, { recursive: true, force: true }))

function watchMachine() {
  const child = startFettle(['check', machine, '--shared', join(dir, 'content'), '--watch', '--format', 'short'])
  let output = ''
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    output += text
  })
  const ended = new Promise<number | null>((end) => child.once('exit', end))
  return {
    /** Waits for a report with this in it, and forgets what came before. */
    async sees(expected: RegExp) {
      await expect.poll(() => output, { timeout: 20_000, interval: 20 }).toMatch(expected)
      output = ''
    },
    async stop() {
      child.kill('SIGINT')
      return await ended
    },
  }
}

/** Writes as many editors do: beside the file, and then in its place. */
function save(path: string, text: string): void {
  writeFileSync(`${path}~`, text)
  renameSync(`${path}~`, path)
}

test('each save is answered, a folder may go away and come back, and the last check gives the exit code', async () => {
  const watched = watchMachine()
  await watched.sees(/checked in \d+ ms/)
  const page = join(machine, 'pages/front/use.mdx')
  const before = readFileSync(page, 'utf8')
  save(page, `${before}\nSee <Tag id="PS-199" />.\n`)
  await watched.sees(/use\.mdx:\d+:\d+: error: no device has the tag `PS-199`[\s\S]*checked in/)
  save(page, before)
  await watched.sees(/^checked in \d+ ms/m)
  rmSync(machine, { recursive: true })
  await watched.sees(/cannot be read|is empty|no `machine\.yaml`/)
  cpSync('tests/fixtures/sound-machine', machine, { recursive: true })
  await watched.sees(/^checked in \d+ ms/m)
  rmSync(join(machine, 'machine.yaml'))
  await watched.sees(/has no `machine\.yaml`/)
  expect(await watched.stop()).toBe(1)
})
