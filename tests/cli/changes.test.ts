import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

let dir: string
let revised: string
beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-changes-'))
  revised = join(dir, 'revised')
  cpSync('example-machine', revised, { recursive: true })
  const devices = join(revised, 'data/devices.csv')
  writeFileSync(devices, readFileSync(devices, 'utf8').replace('lift,346,268', 'lift,346,270'))
  expect(await runFettle(['build', 'example-machine', '--out', join(dir, 'site')])).toMatchObject({ code: 0 })
}, 120_000)
afterAll(() => rmSync(dir, { recursive: true, force: true }))

describe('fettle changes', () => {
  test.each(['folder', 'release', 'zip'])('against a %s', async (kind) => {
    const old = { folder: 'example-machine', release: join(dir, 'site'), zip: join(dir, 'site.zip') }[kind] ?? ''
    const ran = await runFettle(['changes', old, revised, '--format', 'json'])
    expect(ran).toMatchObject({ code: 0, stderr: '' })
    expect(JSON.parse(ran.stdout).changes).toMatchObject([
      { kind: 'moved', group: 'elsewhere', was: 'LS206', details: [{ field: 'y', was: '268', is: '270' }] },
    ])
  })

  test('text, and a page to print', async () => {
    expect((await runFettle(['changes', 'example-machine', revised])).stdout).toContain('device `LS206` moved')
    const page = join(dir, 'changes.html')
    expect(await runFettle(['changes', 'example-machine', revised, '--format', 'html', '--out', page])).toMatchObject({ code: 0, stdout: '' })
    const html = readFileSync(page, 'utf8')
    expect(html).toContain('<code>LS206</code> moved')
    expect(html).not.toMatch(/<script|https?:/)
  })

  test('what is no machine is said', async () => {
    expect(await runFettle(['changes', join(dir, 'none'), revised])).toMatchObject({ code: 2, stderr: expect.stringContaining('there is no') })
    expect(await runFettle(['changes', 'tests', revised])).toMatchObject({ code: 2, stderr: expect.stringContaining('is no machine folder') })
  })
})
