import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startFettle } from './run-fettle.ts'

const dir = join(mkdtempSync(join(tmpdir(), 'fettle-')), 'machine')
const page = join(dir, 'pages/front/use.mdx')
let said = ''
let child: ReturnType<typeof startFettle>
let url: string

beforeAll(async () => {
  cpSync('tests/fixtures/sound-machine', dir, { recursive: true })
  child = startFettle(['preview', dir, '--port', '0'])
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    said += text
  })
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    said += text
  })
  url = await until(() => /http:\/\/127\.0\.0\.1:\d+\//.exec(said)?.[0])
}, 60_000)
afterAll(async () => {
  const ended = new Promise((done) => child.on('close', done))
  child.kill('SIGTERM')
  await ended
  rmSync(join(dir, '..'), { recursive: true, force: true })
})

/** Asks again and again until there is an answer. */
async function until<T>(ask: () => T | undefined | Promise<T | undefined>): Promise<T> {
  for (let tries = 0; tries < 300; tries++) {
    const answer = await ask()
    if (answer !== undefined) return answer
    await new Promise((done) => setTimeout(done, 100))
  }
  throw new Error(`nothing came; the command said:\n${said}`)
}

const read = async (path: string) => (await fetch(url + path)).text()

test('it shows the built pages, on the loopback address, and nothing beside them', async () => {
  expect(await read('index.html')).toContain('What is it about?')
  expect((await fetch(`${url}tags/PS-101.html`)).status).toBe(200)
  expect((await fetch(`${url}%2e%2e/%2e%2e/etc/passwd`)).status).toBe(404)
  expect((await fetch(`${url}none.html`)).status).toBe(404)
})

test('a saved page is built again and the open page is told; an error leaves the last build', async () => {
  const events = await fetch(`${url}.built`)
  const told = events.body?.getReader().read()
  writeFileSync(page, readFileSync(page, 'utf8').replace('holds a crate', 'holds one crate'))
  await told
  expect(await read('front/use.html')).toContain('holds one crate')

  writeFileSync(page, readFileSync(page, 'utf8').replace('id="PS-101"', 'id="PS-109"'))
  await until(() => (said.includes('no device has the tag `PS-109`') ? true : undefined))
  expect(await read('front/use.html')).toContain('holds one crate')
})
