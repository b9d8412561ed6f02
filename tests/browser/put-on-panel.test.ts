import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type BuiltExample, buildExample } from './build-example.ts'
import { launchChromium } from './chromium.ts'
import { type Served, serveFolder } from './serve.ts'
import { usePage } from './use-page.ts'

// What the README tells those who put a manual on a panel, line by line.
const shell = [...readFileSync('README.md', 'utf8').matchAll(/^```sh\n([\s\S]*?)^```/gm)].map(([, text = '']) => text)
const kiosk = shell.find((text) => text.includes('--kiosk')) ?? ''
const renewal = shell.find((text) => text.includes('unzip')) ?? ''
const flags = kiosk.split(/\s+/).filter((word) => word.startsWith('--') && !word.startsWith('--user-data-dir='))

let browser: Browser
let built: BuiltExample
let served: Served
let panel: string
beforeAll(async () => {
  ;[browser, built] = await Promise.all([launchChromium({ args: flags }), buildExample()])
  panel = mkdtempSync(join(tmpdir(), 'fettle-panel-'))
  cpSync(built.dir, join(panel, 'manual'), { recursive: true })
  served = await serveFolder(join(panel, 'manual'), { prefix: '/hall-2/manual/' })
}, 180_000)
afterAll(async () => {
  await browser?.close()
  await served?.close()
  built?.remove()
  if (panel) rmSync(panel, { recursive: true, force: true })
})

const screen = { width: 1024, height: 768, touch: true }

test('the flags of the README are those of the browser that these tests use', () => {
  expect(flags.length).toBeGreaterThan(4)
})

describe.each([
  ['from a copied folder', () => `${pathToFileURL(join(panel, 'manual')).href}/`],
  ['from a server, below a path', () => served.url],
])('%s', (_, root) => {
  test('what the machine asks for is opened', async () => {
    await usePage(browser, screen, async (page) => {
      for (const [asked, opened] of [
        ['lookup.html?alarm=201', 'alarms/A0201.html'],
        ['lookup.html?alarm=0201', 'alarms/A0201.html'],
        ['lookup.html?alarm=  201', 'alarms/A0201.html'],
        ['lookup.html#alarm=201', 'alarms/A0201.html'],
        ['lookup.html?tag=prs204', 'tags/PRS204.html'],
        ['lookup.html?part=4410-0112', 'parts/4410-0112.html'],
        ['lookup.html?drawing=E-104', 'drawings/E-104.html'],
        ['lookup.html?lockout=lo-2', 'lockout/lo-2.html'],
        ['es/lookup.html?alarm=201', 'es/alarms/A0201.html'],
      ] as const) {
        await page.goto('about:blank')
        await page.goto(root() + asked)
        await page.waitForURL(root() + opened)
        expect(await page.locator('h1').count(), asked).toBe(1)
      }
    })
  })

  test('what the machine does not have leads to a list', async () => {
    await usePage(browser, screen, async (page) => {
      for (const asked of ['lookup.html?alarm=7777', 'lookup.html?tag=PRS999', 'lookup.html?alarm=', 'lookup.html?machine=1', 'lookup.html']) {
        await page.goto('about:blank')
        await page.goto(root() + asked)
        expect(page.url(), asked).toBe(root() + asked)
        expect(await page.locator('[data-lookup]').isVisible(), asked).toBe(true)
        expect(await page.locator('[data-lookup]').textContent(), asked).not.toContain('Scripts are off')
        await page.getByRole('link', { name: 'Alarms' }).first().tap()
        await page.waitForURL(`${root()}alarms.html`)
      }
    })
  })
})

// `unzip` and `sha256sum` are those of the panel.
test.runIf(process.platform === 'linux')('a new release takes the place of the old one, and a damaged one does not', () => {
  const commands = renewal.replaceAll('/home/panel', `'${panel}'`).replaceAll('rcw-400', basename(built.dir))
  cpSync(join(dirname(built.dir), `${basename(built.dir)}.zip`), join(panel, `${basename(built.dir)}.zip`))
  const before = readFileSync(join(panel, 'manual/manifest.json'), 'utf8')
  rmSync(join(panel, 'manual/index.html'))
  expect(() => execFileSync('sh', ['-c', commands.replace('sha256sum', 'rm index.html; sha256sum')], { stdio: 'pipe' })).toThrow(/index\.html/)
  expect(() => readFileSync(join(panel, 'manual/index.html'))).toThrow('ENOENT')
  rmSync(join(panel, 'new'), { recursive: true })
  execFileSync('sh', ['-c', commands], { stdio: 'pipe' })
  expect(readFileSync(join(panel, 'manual/manifest.json'), 'utf8')).toBe(before)
  expect(readFileSync(join(panel, 'manual/index.html'), 'utf8')).toContain('data-site="rcw-400-0400-017"')
})
