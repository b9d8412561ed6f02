import { mkdtempSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import type { SearchResult } from '../../src/search/result.ts'
import { launchChromium, openPage } from '../browser/chromium.ts'
import { serveFolder } from '../browser/serve.ts'
import { buildSearch } from './build-search.ts'
import { writeSearchPages } from './search-pages.ts'
import { makeSite } from './site.ts'

// A browser on a busy machine is slow, which is no fault.
vi.setConfig({ testTimeout: 60_000 })
const eventually = <T>(read: () => Promise<T>) => expect.poll(read, { timeout: 20_000 })

const panel = { width: 1024, height: 768, touch: true }

let browser: Browser
let folder: string
let siteDir: string

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle search #ü '))
  siteDir = join(folder, 'crate washer %20')
  const site = makeSite(siteDir, { more: 300 })
  await buildSearch(site)
  await writeSearchPages(siteDir)
  browser = await launchChromium()
}, 900_000)

afterAll(async () => {
  await browser?.close()
  rmSync(folder, { recursive: true, force: true })
})

const fromDisk = (path: string, after = '') => pathToFileURL(join(siteDir, path)).href + after

/** Names and titles of what is shown, in order. */
const shown = (page: Page) =>
  page
    .locator('[data-search-results] a')
    .evaluateAll((links) =>
      links.map((link) => link.querySelector('.label, .row-number')?.textContent ?? link.querySelector('.found-title')?.textContent),
    )
const status = (page: Page) => page.locator('[data-search-status]')
const search = (page: Page, query: string): Promise<SearchResult> =>
  page.evaluate((query) => window.FettleSearch?.search(query) ?? Promise.reject(new Error('no search')), query)

test.each(['from disk', 'from a sub-folder of a server'])('%s names, text, slips and synonyms are found, in each language', async (where) => {
  const server = await serveFolder(siteDir, { prefix: '/manuals/washer/' })
  const opened = await openPage(browser, panel)
  const address = (path: string) => (where === 'from disk' ? fromDisk(path) : server.url + path)
  const first = async (query: string) => {
    const { exact, pages } = await search(opened.page, query)
    return exact[0]?.id ?? pages[0]?.id ?? pages[0]?.title
  }
  await opened.page.goto(address('search.html'))
  expect(await first('px 104')).toBe('PX-104')
  expect(await first('alarm 217')).toBe('A0217')
  expect(await first('7410225003')).toBe('7410-2250-03')
  expect(await first('-B12')).toBe('=S1+C2-B12')
  expect(await first('straner')).toBe('Cleaning')
  expect(await first('VFD')).toBe('LO-2')
  expect(await first('zeppelin')).toBeUndefined()

  const { pages } = await search(opened.page, 'rinse the strainer')
  expect(pages[0]).toMatchObject({ title: 'Cleaning', section: 'The strainer', url: `${address('manual/cleaning.html')}#strainer` })
  expect(pages[0]?.passage.filter(({ marked }) => marked).map(({ text }) => text)).toEqual(['Rinse', 'strainer'])
  const tag = (await search(opened.page, '=S1+C2-B12')).exact[0]
  await opened.page.goto(tag?.url ?? '')
  expect(await opened.page.locator('h1').textContent()).toBe('=S1+C2-B12 Level of the wash tank')

  await opened.page.goto(address('es/search.html'))
  expect(await first('valvula')).toBe('A0217')
  expect(await first('prs104')).toBe('PRS104')
  expect(await first('strainer')).toBeUndefined()
  expect(await opened.page.evaluate(() => window.FettleSearch?.mode())).toBe('worker')
  expect(opened.faults()).toEqual([])
  await opened.close()
  await server.close()
})

test('with no worker the page itself finds the same', async () => {
  const opened = await openPage(browser, panel)
  await opened.page.goto(fromDisk('search.html'))
  const inWorker = await search(opened.page, 'lift')
  await opened.page.addInitScript('window.Worker = function () { throw new Error("refused") }')
  await opened.page.reload()
  expect(await search(opened.page, 'lift')).toEqual(inWorker)
  expect(await opened.page.evaluate(() => window.FettleSearch?.mode())).toBe('page')
  expect(inWorker.pages.length).toBeGreaterThan(3)
  const early = await opened.page.evaluate(async () => {
    const ids: string[] = []
    await window.FettleSearch?.search('prs104', { onNames: (exact) => ids.push(...exact.map(({ id }) => id)) })
    await window.FettleSearch?.search('lift', { onNames: () => ids.push('none') })
    return ids
  })
  expect(early).toEqual(['PRS104'])
  expect(opened.faults()).toEqual([])
  await opened.close()
})

test('a warm search of 300 pages answers a new query within 100 ms', { retry: 2 }, async () => {
  const opened = await openPage(browser, panel)
  await opened.page.goto(fromDisk('search.html'))
  await opened.page.evaluate(() => window.FettleSearch?.warm())
  const times: number[] = []
  for (const query of ['ls1042', 'conveyor', 'heater door', 'guidse', 'alarm 217', 'crate', 'LS11', 'pump filter'])
    times.push(
      await opened.page.evaluate(async (query) => {
        const start = performance.now()
        await window.FettleSearch?.search(query)
        return performance.now() - start
      }, query),
    )
  const median = times.sort((a, b) => a - b)[4]
  expect(median).toBeLessThan(100)
  await opened.close()
})

test('results follow the typing, Enter opens the thing that was named, Escape clears', async () => {
  const opened = await openPage(browser, { ...panel, touch: false })
  const { page } = opened
  await page.goto(fromDisk('search.html', '?q=prs-1'))
  await eventually(() => shown(page)).toEqual(['PRS104', 'PRS105', 'PRS112', 'A0104'])
  expect(await status(page).textContent()).toBe('4 found.')
  expect(await page.locator('[data-search-fallback]').isHidden()).toBe(true)
  // The beginning of a series names nothing: the list stays.
  await page.press('[name=q]', 'Enter')
  await page.waitForTimeout(100)
  expect(page.url()).toContain('search.html?q=prs-1')

  await page.fill('[name=q]', 'straner')
  await eventually(() => status(page).textContent()).toBe('1 found. Searched for “strainer” instead of “straner”.')
  expect(await page.locator('.found-passage').textContent()).toBe('Rinse the strainer of the pre-wash tank with clear water until it is bright.')
  expect(page.url()).toContain('?q=straner')
  await page.fill('[name=q]', 'script')
  await expect
    .poll(() => page.locator('.found-passage').allTextContents())
    .toEqual(['Never reach under a raised lift. A tag may read <script>alert(1)</script>.'])

  await page.press('[name=q]', 'Escape')
  expect([await page.inputValue('[name=q]'), await shown(page), await page.locator('[data-search-fallback]').isVisible()]).toEqual(['', [], true])
  await page.fill('[name=q]', 'prs 104')
  await page.press('[name=q]', 'Enter')
  await page.waitForURL('**/tags/PRS104.html')
  await page.goBack()
  await eventually(() => shown(page)).toEqual(['PRS104', 'A0104'])

  await page.goto(fromDisk('search.html', '#q=LS10'))
  await eventually(async () => (await shown(page)).length).toBe(10)
  await page.click('.search-more')
  await eventually(async () => (await shown(page)).length).toBe(20)
  expect(opened.faults()).toEqual([])
  await opened.close()
})

test('without the index the reader is told, and led to the lists', async () => {
  const opened = await openPage(browser, panel)
  await opened.page.route('**/core.js', (route) => route.abort())
  await opened.page.goto(fromDisk('search.html', '?q=lift'))
  await eventually(() => status(opened.page).textContent()).toContain('cannot be loaded')
  expect(await opened.page.locator('[data-search-fallback]').isVisible()).toBe(true)
  await opened.page.unroute('**/core.js')
  for (const missing of [/wasm\.en/, /pagefind\.en/, /index\/en/, /fragment\/en/]) {
    await opened.page.route(missing, (route) => route.abort())
    await opened.page.goto(fromDisk('search.html', '?q=prs104'))
    await eventually(() => status(opened.page).textContent()).toBe('1 found. Only names were searched: this browser cannot search the text.')
    expect(await shown(opened.page)).toEqual(['PRS104'])
    await opened.page.unroute(missing)
  }
  // The last was a file of passages, which is asked for again.
  await opened.page.fill('[name=q]', 'prs104 lift')
  await eventually(() => shown(opened.page)).toEqual(['PRS104', 'A0104'])
  await opened.close()
})

test.each([
  [1024, 768],
  [800, 480],
])('on a panel of %i x %i keys open by touch, beside the field and never over it', async (width, height) => {
  const opened = await openPage(browser, { width, height, touch: true })
  const { page } = opened
  await page.goto(fromDisk('index.html'))
  expect(await page.locator('.keys').isHidden()).toBe(true)
  // The page is scrolled for the keys: the touch must not fall on what slides below the finger.
  await page.evaluate(() => document.querySelector('form')?.insertAdjacentHTML('beforebegin', '<div style="height: 300px"></div>'))
  await page.evaluate(() =>
    document.querySelector('p')?.insertAdjacentHTML('beforebegin', '<a href="list.html" style="display: block; height: 900px">A list</a>'),
  )
  await page.tap('[name=q]')
  expect(await page.getAttribute('[name=q]', 'inputmode')).toBe('none')
  const heights = await page.locator('.key').evaluateAll((keys) => keys.map((key) => key.getBoundingClientRect().height))
  expect(heights.length).toBe(43)
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(56)
  const place = (selector: string) => page.locator(selector).evaluate((it) => it.getBoundingClientRect().toJSON() as DOMRect)
  const [form, keys] = [await place('form'), await place('.keys')]
  expect(form.top).toBeGreaterThanOrEqual(0)
  expect(form.bottom).toBeLessThan(keys.top)
  expect(page.url()).toContain('index.html')
  await page.tap('.key:text-is("Close")')
  expect(await page.getAttribute('[name=q]', 'inputmode')).toBeNull()
  expect(await page.locator('.keys').isHidden()).toBe(true)
  expect(opened.faults()).toEqual([])
  await opened.close()
})

test('keys write into the field beside a real keyboard, and lead from the start page to the results', async () => {
  const opened = await openPage(browser, panel)
  const { page } = opened
  const press = async (...keys: string[]) => {
    for (const key of keys) await page.tap(`.key:text-is("${key}")`)
  }
  await page.goto(fromDisk('index.html'))
  await page.tap('[name=q]')
  await press('P', 'X', '-', '1', '5', 'Erase')
  await page.keyboard.type('04')
  await press('Find')
  await page.waitForURL('**/search.html?q=PX-104')
  await eventually(() => shown(page)).toEqual(['PX-104'])
  await page.goto(fromDisk('es/search.html'))
  await page.tap('.keys-toggle')
  await press('Ñ', 'Vaciar', 'V', 'Á É Í', 'Á', 'L', 'Espacio', 'A')
  expect(await page.inputValue('[name=q]')).toBe('VÁL A')
  await eventually(() => shown(page)).toEqual(['A0217'])
  expect(opened.faults()).toEqual([])
  await opened.close()
})

test('the search page with results and keys has no fault that axe knows', async () => {
  const opened = await openPage(browser, panel)
  await opened.page.goto(fromDisk('search.html', '?q=lift'))
  await opened.page.tap('.keys-toggle')
  await eventually(async () => (await shown(opened.page)).length).toBeGreaterThan(3)
  await opened.page.addScriptTag({ path: createRequire(import.meta.url).resolve('axe-core') })
  const violations = await opened.page.evaluate(
    'axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => violations.map(({ id, nodes }) => [id, ...nodes.map(({ html }) => html)]))',
  )
  expect(violations).toEqual([])
  await opened.close()
})
