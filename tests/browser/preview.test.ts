import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startFettle } from '../cli/run-fettle.ts'
import { launchChromium } from './chromium.ts'
import { isInWindow, markedZones } from './marked-zones.ts'
import { usePage } from './use-page.ts'

const parent = mkdtempSync(join(tmpdir(), 'fettle-'))
const machine = join(parent, 'roll-slitter')
const written = join(machine, 'pages/components/rewinder.mdx')
const onSheet = 'sheet="1" tag="=A1+R1-MA1"'

let browser: Browser
let preview: ReturnType<typeof startFettle>
let url: string

beforeAll(async () => {
  cpSync('tests/fixtures/machines/roll-slitter', machine, { recursive: true })
  change(onSheet, 'sheet="2" tag="=A1+R1-MA1"')
  preview = startFettle(['preview', machine, '--port', '0'])
  ;[browser, url] = await Promise.all([launchChromium(), addressOf(preview)])
}, 180_000)
afterAll(async () => {
  await browser?.close()
  const ended = new Promise((done) => preview.on('close', done))
  preview.kill('SIGTERM')
  await ended
  rmSync(parent, { recursive: true, force: true })
})

function change(was: string, is: string): void {
  const text = readFileSync(written, 'utf8')
  if (!text.includes(was)) throw new Error(`the page does not hold ${was}`)
  writeFileSync(written, text.replace(was, is))
}

function addressOf({ stdout, stderr }: ReturnType<typeof startFettle>): Promise<string> {
  return new Promise((found, failed) => {
    let said = ''
    for (const stream of [stdout, stderr])
      stream?.setEncoding('utf8').on('data', (text: string) => {
        said += text
        const [address] = /http:\/\/127\.0\.0\.1:\d+\//.exec(said) ?? []
        if (address) found(address)
      })
    stdout?.on('end', () => failed(new Error(`the preview ended:\n${said}`)))
  })
}

async function onPage(path: string, act: (page: Page) => Promise<void>): Promise<void> {
  await usePage(browser, { width: 1024, height: 768, touch: true }, async (page) => {
    await page.goto(url + path)
    await act(page)
  })
}

/** The finding that stands in the page, and the block that comes after it. */
async function besideBlock(page: Page, rule: string): Promise<{ finding: string; block: string }> {
  const found = page.locator('main .fettle-found', { hasText: `[${rule}]` })
  await found.waitFor()
  const block = found.locator('xpath=following-sibling::*[not(@hidden) and not(contains(@class, "fettle-found"))][1]')
  return { finding: (await found.locator('p').first().textContent()) ?? '', block: (await block.textContent()) ?? '' }
}

test('a finding of the open page stands before the block that it is about, and a repaired page loses it', async () => {
  await onPage('components/rewinder.html', async (page) => {
    const { finding, block } = await besideBlock(page, 'tag-not-on-sheet')
    expect(finding).toMatch(/pages\/components\/rewinder\.mdx:8:\d+: warning: sheet 2 of drawing `RS-E-0201` does not show `=A1\+R1-MA1`/)
    expect(block).toContain('Motor and drive are on')
    expect(await page.locator('.fettle-found summary').textContent()).toBe('1 found in this page, 0 elsewhere')
    // An error: the last good build stays, and says so.
    change('The encoder <Tag id="=A1+R1-BG1" />', 'The encoder <Tag id="=A1+R1-BG9" />')
    await page.locator('.fettle-found summary', { hasText: 'Not built: this is the last build without errors.' }).waitFor()
    expect(await besideBlock(page, 'unknown-tag')).toMatchObject({ block: expect.stringContaining('Motor and drive are on') })
    change('=A1+R1-BG9', '=A1+R1-BG1')
    change('sheet="2" tag="=A1+R1-MA1"', onSheet)
    await expect.poll(() => page.locator('.fettle-found').count(), { timeout: 60_000 }).toBe(0)
  })
}, 120_000)

test('what is found about the wording is a mark beside its words, and is told when the mark is touched', async () => {
  const plain = 'turns the rewind shaft. Its drive'
  change(plain, 'turns the rewind shaft; its drive')
  await onPage('components/rewinder.html', async (page) => {
    const mark = page.getByRole('button', { name: 'warning: a semicolon joins two sentences' })
    await mark.waitFor()
    const found = page.locator('main .fettle-found', { hasText: '[semicolon-in-sentence]' })
    expect(await found.isVisible()).toBe(false)
    const words = await page.evaluate(() => [...(CSS.highlights.get('fettle-wording') ?? [])].map((it) => String(it)))
    expect(words).toEqual([';'])
    await mark.tap()
    expect(await found.isVisible()).toBe(true)
    expect(await mark.getAttribute('aria-expanded')).toBe('true')
    if (process.env.FETTLE_PICTURES) await page.screenshot({ path: join(process.env.FETTLE_PICTURES, 'wording.png') })
    // Beside its line, also after what was found has moved it.
    const [markBox, lineBox] = [await mark.boundingBox(), await page.locator('main p', { hasText: 'turns the rewind shaft;' }).last().boundingBox()]
    expect(Math.abs((markBox?.y ?? 0) - (lineBox?.y ?? 1000))).toBeLessThan(20)
    await mark.tap()
    expect(await found.isVisible()).toBe(false)
    change('turns the rewind shaft; its drive', plain)
    await expect.poll(() => mark.count(), { timeout: 60_000 }).toBe(0)
  })
}, 120_000)

test('a page without a finding shows those of other pages above itself only', async () => {
  change(onSheet, 'sheet="2" tag="=A1+R1-MA1"')
  await onPage('front/safety.html', async (page) => {
    await page.locator('.fettle-found summary', { hasText: '0 found in this page, 1 elsewhere' }).waitFor()
    expect(await page.locator('main .fettle-found').count()).toBe(0)
  })
}, 120_000)

test('a link with a zone opens the sheet of a PDF with the zone marked and in view', async () => {
  await onPage('components/rewinder.html', async (page) => {
    await page.getByRole('link', { name: /RS-E-0201.*zone D4/ }).tap()
    await expect.poll(() => page.url()).toMatch(/drawings\/RS-E-0201\.html#zone-D4$/i)
    await expect.poll(() => markedZones(page)).toEqual([true])
    expect(await page.locator('[data-sheet-drawing] image').count()).toBe(1)
    await expect.poll(() => isInWindow(page)).toBe(true)
  })
}, 120_000)
