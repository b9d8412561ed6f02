import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
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

/** The report that stands in a page of the preview. */
async function reportIn(path: string): Promise<{ current: boolean; findings: { file: string; line: number; rule: string }[] }> {
  const [, json = ''] = /<script type="application\/json" id="fettle-findings">(.*?)<\/script>/s.exec(await read(path)) ?? []
  return JSON.parse(json)
}

test('each page brings what was found, and says where its blocks stand; with an error it is the last good one', async () => {
  await until(async () => ((await reportIn('front/use.html')).current ? undefined : true))
  const { findings } = await reportIn('front/use.html')
  expect(findings).toMatchObject([{ line: 6, rule: 'unknown-tag' }])
  expect(findings[0]?.file.endsWith('pages/front/use.mdx')).toBe(true)
  const events = await fetch(`${url}.built`)
  const told = events.body?.getReader().read()
  writeFileSync(page, readFileSync(page, 'utf8').replace('id="PS-109"', 'id="PS-101"').replace('title:', 'draft: true\ntitle:'))
  await told
  const html = await read('front/use.html')
  expect(await reportIn('front/use.html')).toMatchObject({ current: true, findings: [{ rule: 'draft-page' }] })
  expect(html).toContain(`data-source-file="${findings[0]?.file}" data-source-line="7"`)
  const script = await fetch(`${url}.preview.js`)
  expect([script.status, script.headers.get('content-type')]).toEqual([200, 'text/javascript'])
})

describe('before anything could be built', () => {
  test('every address tells so, with what was found', async () => {
    const broken = join(dir, '..', 'broken')
    cpSync(dir, broken, { recursive: true })
    writeFileSync(join(broken, 'pages/front/use.mdx'), '---\ntitle: <b>\n---\nSee <Tag id="XX-1" />.\n')
    const other = startFettle(['preview', broken, '--port', '0'])
    let words = ''
    for (const stream of [other.stdout, other.stderr])
      stream?.setEncoding('utf8').on('data', (text: string) => {
        words += text
      })
    try {
      const address = await until(() => /http:\/\/127\.0\.0\.1:\d+\//.exec(words)?.[0])
      const html = await (await fetch(`${address}index.html`)).text()
      expect(html).toContain('Nothing was built yet')
      expect(html).toContain('"rule":"unknown-tag"')
    } finally {
      other.kill('SIGTERM')
    }
  })
})
