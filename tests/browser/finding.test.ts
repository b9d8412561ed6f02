import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import { usePage } from './use-page.ts'

const panel = { width: 1024, height: 768, touch: true }

const site = builtSite(() => buildExample('--no-zip'))

const onPanel = (act: (page: Page) => Promise<void>) => usePage(site.browser, panel, act)

test('results stand under what they are, with the place on the machine, and the rest of a kind comes by touch', async () => {
  await onPanel(async (page) => {
    await page.goto(site.fromDisk('search.html'))
    await page.locator('input[name=q]').fill('lift')
    await page.locator('[data-search-results] a').first().waitFor()
    const group = (name: string) => page.getByRole('region', { name, exact: true })
    expect(await page.locator('.found-kind').allTextContents()).toEqual(expect.arrayContaining(['Assemblies', 'Parts']))
    expect(
      await group('Assemblies')
        .getByRole('link', { name: /Destacking lift/ })
        .locator('.row-side')
        .textContent(),
    ).toBe('Destacking lift')
    await page.locator('input[name=q]').fill('A0')
    const alarms = group('Alarms').locator('a:visible')
    await expect.poll(() => alarms.count()).toBe(4)
    await group('Alarms').getByRole('button', { name: 'All 10' }).tap()
    expect(await alarms.count()).toBe(10)
    expect(await group('Alarms').getByRole('button').count()).toBe(0)
    await page.locator('input[name=q]').fill('job clean')
    await group('Jobs').locator('a').first().waitFor()
    expect(await page.locator('.found-kind').first().textContent()).toBe('Jobs')
  })
})

test('the first row stays where it is while the rest is searched, and no row moves under a finger', async () => {
  await onPanel(async (page) => {
    await page.goto(site.fromDisk('index.html'))
    await page.evaluate(() => {
      const results = document.querySelector('[data-search-results]')
      const tops: number[] = []
      Object.assign(window, { tops, renewed: 0 })
      new MutationObserver(() => {
        const row = results?.querySelector('a')
        if (row) tops.push(Math.round(row.getBoundingClientRect().top + scrollY))
      }).observe(document.querySelector('main') as Element, { childList: true, subtree: true, characterData: true })
      const send = (name: string) => results?.dispatchEvent(new PointerEvent(name, { bubbles: true, pointerId: 7 }))
      // The finger comes down as soon as there is a row, and stays for a while.
      const waiting = setInterval(() => {
        if (!results?.querySelector('a')) return
        clearInterval(waiting)
        const row = results.querySelector('a')
        send('pointerdown')
        setTimeout(() => {
          Object.assign(window, { stayed: row?.isConnected })
          send('pointerup')
        }, 1500)
      }, 1)
    })
    await page.locator('input[name=q]').fill('X2:4')
    await page.waitForFunction(() => 'stayed' in window)
    expect(await page.evaluate(() => Reflect.get(window, 'stayed'))).toBe(true)
    await expect.poll(() => page.locator('.search-status').textContent()).toMatch(/^\d+ found/)
    const tops: number[] = await page.evaluate(() => Reflect.get(window, 'tops'))
    expect(tops.length).toBeGreaterThan(1)
    expect(Math.max(...tops) - Math.min(...tops)).toBe(0)
  })
})

test('what was opened last waits in the search, newest first, and each once', async () => {
  await onPanel(async (page) => {
    await page.goto(site.fromDisk('search.html'))
    expect(await page.locator('.opened').isVisible()).toBe(false)
    for (const path of ['tags/PRS204.html', 'alarms/A0201.html', 'devices.html', 'lockout/lo-2.html', 'tags/PRS204.html'])
      await page.goto(site.fromDisk(path))
    await page.goto(site.fromDisk('search.html'))
    expect(await page.locator('.opened a').allTextContents()).toEqual([
      'PRS204 Lift at the bottom position',
      'LO-2 Lift',
      'A0201 Lift did not reach its position',
    ])
    await page.goto(site.fromDisk('index.html'))
    expect(await page.locator('.opened').isVisible()).toBe(false)
    await page.locator('input[name=q]').tap()
    await page.locator('.opened a').nth(1).tap()
    await page.waitForURL(/lockout\/lo-2\.html$/)
    await page.goto(site.fromDisk('alarms.html'))
    await page.locator('.opened').getByRole('link', { name: /A0201/ }).tap()
    await page.waitForURL(/alarms\/A0201\.html$/)
    // Another language has names of its own.
    await page.goto(site.fromDisk('es/search.html'))
    expect(await page.locator('.opened').isVisible()).toBe(false)
  })
})

test('a device names those that stand nearest to it', async () => {
  await onPanel(async (page) => {
    await page.goto(site.fromDisk('tags/PRS204.html'))
    const near = page.locator('.nearby a')
    expect(await near.count()).toBe(6)
    const tag = await near.first().textContent()
    await near.first().tap()
    await expect.poll(() => page.url()).toContain(`/tags/${tag}.html`)
  })
})

test('a list is shortened by function, drawing and words with the keys, and is still short on the way back', async () => {
  await onPanel(async (page) => {
    await page.goto(site.fromDisk('devices.html'))
    const shown = page.locator('[data-filter-list] > li:visible')
    const all = await shown.count()
    await page.locator('[data-filter-by=purpose]').selectOption({ label: 'Measures' })
    const measuring = await shown.count()
    expect(measuring).toBeLessThan(all / 2)
    await page.locator('[data-filter-by=drawing]').selectOption('E-106')
    const onDrawing = await shown.count()
    expect(onDrawing).toBeGreaterThan(0)
    expect(onDrawing).toBeLessThan(measuring)
    await page.locator('[data-filter-text]').tap()
    for (const key of ['T', 'E']) await page.getByRole('button', { name: key, exact: true }).first().tap()
    expect(await page.locator('[data-filter-text]').inputValue()).toMatch(/^te$/i)
    const left = await shown.count()
    expect(await page.locator('[data-filter-count]').textContent()).toBe(`${left} shown`)
    await page.getByRole('button', { name: 'Close' }).tap()
    await shown.first().locator('a').tap()
    await page.waitForURL(/\/tags\//)
    await page.goBack()
    await expect.poll(() => shown.count()).toBe(left)
  })
})
