import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { violations } from './axe.ts'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import type { OpenedPage, openPage } from './chromium.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { classesWithoutStyles } from './loaded-styles.ts'
import { isInWindow, markedZones } from './marked-zones.ts'
import { pagesOfText, pageWeight, totalBytes } from './page-weight.ts'
import { type Served, serveFolder } from './serve.ts'
import { usePage } from './use-page.ts'

const panel = { width: 1024, height: 768, touch: true }

const site = builtSite(() => buildExample('--no-zip'))
let served: Served
beforeAll(async () => {
  served = await serveFolder(site.dir, { prefix: '/manuals/rcw/' })
})
afterAll(() => served?.close())

const overHttp = (path: string) => served.url + path

const onPage = (options: Parameters<typeof openPage>[1], act: (page: Page, opened: OpenedPage) => Promise<void>) =>
  usePage(site.browser, options, act)

describe.each([
  ['from disk', site.fromDisk],
  ['over http from a sub-folder', overHttp],
])('%s, with the network off', (_, address) => {
  test('every kind of page opens with an empty console', async () => {
    await onPage(panel, async (page) => {
      for (const [kind, path] of Object.entries(kindsOfPages)) {
        await page.goto(address(path))
        expect(await page.locator('h1').count(), kind).toBe(1)
        expect(await page.locator('.nameplate .plate').count(), kind).toBe(1)
      }
    })
  })

  test('touches lead from a stop to its cause, and back to the start', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('index.html'))
      await page.getByRole('link', { name: 'It stopped' }).first().tap()
      await page.getByRole('link', { name: /A0201/ }).tap()
      await page
        .locator('.beside')
        .getByRole('link', { name: /PRS204/ })
        .first()
        .tap()
      await expect.poll(() => page.url()).toMatch(/tags\/PRS204\.html$/)
      await page.getByRole('link', { name: /Find it on the drawing/ }).tap()
      await expect.poll(() => page.url()).toMatch(/drawings\/E-104\/2\.html#at-PRS204$/)
      expect(await page.locator('#at-PRS204 rect').evaluate((mark) => getComputedStyle(mark).stroke)).not.toBe('none')
      await page.locator('.plate').tap()
      await expect.poll(() => page.url()).toMatch(/index\.html$/)
    })
  })

  test.each([
    ['PRS204', 'PRS204'],
    ['prs204', 'PRS204'],
    ['PRS 204', 'PRS204'],
    ['PRS-2', 'PRS204'],
    ['44100112', '4410-0112'],
    ['4410 0112', '4410-0112'],
    ['A0201', 'A0201'],
    ['A201', 'A0201'],
    ['alarm 201', 'A0201'],
    ['E104', 'E-104'],
    ['LO2', 'LO-2'],
  ])('search for %s finds %s first', async (query, id) => {
    await onPage(panel, async (page) => {
      await page.goto(address('search.html'))
      await page.locator('input[name=q]').fill(query)
      const first = page.locator('[data-search-results] a').first()
      await first.waitFor()
      expect(await first.textContent()).toContain(id)
    })
  })

  test('a number that several things have finds each of them', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('search.html'))
      await page.locator('input[name=q]').fill('201')
      await page.locator('[data-search-results] a').first().waitFor()
      const found = await page.locator('[data-search-results] a').allTextContents()
      for (const id of ['A0201', 'P-201', 'MTR201'])
        expect(
          found.some((text) => text.startsWith(id)),
          id,
        ).toBe(true)
    })
  })

  test.each([
    ['raised load', /lift|load/i],
    ['proxmity', /proximity/i],
    ['photoeye', /photoelectric/i],
  ])('search for the words "%s" finds a passage', async (query, passage) => {
    await onPage(panel, async (page) => {
      await page.goto(address('search.html'))
      await page.locator('input[name=q]').fill(query)
      await page.locator('[data-search-results] a').first().waitFor()
      expect(await page.locator('[data-search-results]').textContent()).toMatch(passage)
    })
  })

  test('the start page answers in place, gives its tasks back, and opens what was meant', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('index.html'))
      await page.locator('input[name=q]').fill('raised load')
      await page.locator('[data-search-results] a').first().waitFor()
      expect(await page.locator('.questions').isVisible()).toBe(false)
      await page.locator('input[name=q]').fill('')
      await page.locator('.questions').waitFor()
      expect(await page.locator('[data-search-results]').textContent()).toBe('')
      await page.locator('input[name=q]').fill('MTR411')
      await page.locator('.search-form button[type=submit]').tap()
      await expect.poll(() => page.url()).toMatch(/tags\/MTR411\.html$/)
    })
  })

  test('each language searches its own pages', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('es/search.html'))
      await page.locator('input[name=q]').fill('candado')
      const first = page.locator('[data-search-results] a').first()
      await first.waitFor()
      expect(await first.getAttribute('href')).toContain('/es/')
    })
  })

  test.each([
    ['lo-1', 5],
    ['lo-2', 3],
    ['lo-3', 3],
    ['lo-4', 3],
    ['lo-5', 3],
    ['lo-6', 3],
  ])('%s prints with all its working on %i pages or less', async (name, most) => {
    await onPage(panel, async (page) => {
      await page.goto(address(`lockout/${name}.html`))
      const pdf = await page.pdf({ format: 'A4' })
      const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0
      expect(pages).toBeGreaterThan(0)
      expect(pages).toBeLessThanOrEqual(most)
    })
  })

  test('locked points and done steps stay after a reload, until they are cleared', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('lockout/lo-2.html'))
      const count = page.locator('[data-board-count]')
      expect(await count.textContent()).toBe('3 of 3 points still open')
      await page.locator('.point-tick').first().tap()
      await page.locator('.route-tick').first().tap()
      await page.reload()
      expect(await count.textContent()).toBe('2 of 3 points still open')
      expect(await page.locator('[data-tick]').first().isChecked()).toBe(true)
      await page.getByRole('button', { name: 'Clear ticks' }).tap()
      expect(await count.textContent()).toBe('3 of 3 points still open')
      await page.reload()
      expect(await page.locator('[data-point]').first().isChecked()).toBe(false)
    })
  })

  test('the language switch keeps the page and the place on it', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('drawings/E-104/2.html#at-PRS204'))
      await page.getByRole('link', { name: /Español/ }).tap()
      await expect.poll(() => page.url()).toMatch(/es\/drawings\/E-104\/2\.html#at-PRS204$/)
      expect(await page.locator('html').getAttribute('lang')).toBe('es')
    })
  })

  test('a sheet opens on the whole screen, and is enlarged by touch', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('drawings/E-101.html'))
      const widthOfSheet = async () => (await page.locator('[data-sheet-drawing]').boundingBox())?.width ?? 0
      await page.getByRole('button', { name: 'Full screen' }).tap()
      expect((await page.locator('[data-sheet]').boundingBox())?.width).toBe(panel.width)
      const whole = await widthOfSheet()
      await page.getByRole('button', { name: 'Larger' }).tap()
      expect(await widthOfSheet()).toBeGreaterThan(whole * 1.5)
      await page.getByRole('button', { name: 'Whole sheet' }).tap()
      expect(await widthOfSheet()).toBe(whole)
      await page.getByRole('button', { name: 'Close' }).tap()
    })
  })

  test('a link with a zone opens the sheet with the zone marked and in view', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('components/destacking-lift.html'))
      await page.getByRole('link', { name: /E-104.*zone C4/ }).tap()
      await expect.poll(() => page.url()).toMatch(/drawings\/E-104\.html#zone-C4$/i)
      await expect.poll(() => markedZones(page)).toEqual([true])
      await expect.poll(() => isInWindow(page)).toBe(true)
    })
  })

  test('the next sheet of a drawing comes on the whole screen too, and another page does not', async () => {
    await onPage(panel, async (page) => {
      const whole = page.locator('[data-sheet].full')
      await page.goto(address('drawings/E-104.html'))
      await page.getByRole('button', { name: 'Full screen' }).tap()
      await page.getByRole('link', { name: 'Next sheet' }).tap()
      await expect.poll(() => page.url()).toMatch(/drawings\/E-104\/2\.html$/)
      await expect.poll(() => whole.count()).toBe(1)
      await page.goto(address('drawings/E-101.html'))
      expect(await whole.count()).toBe(0)
    })
  })

  test('a list is shortened by words and by area', async () => {
    await onPage(panel, async (page) => {
      await page.goto(address('devices.html'))
      const shown = page.locator('[data-filter-list] > li:visible')
      const all = await shown.count()
      await page.locator('[data-filter-by=area]').selectOption({ label: 'Destacking lift' })
      const inLift = await shown.count()
      await page.locator('[data-filter-text]').fill('clamp')
      expect(all).toBeGreaterThan(inLift)
      expect(await shown.count()).toBeLessThan(inLift)
      expect(await page.locator('[data-filter-count]').textContent()).toBe(`${await shown.count()} shown`)
    })
  })

  test('everything is there to read with scripts off', async () => {
    await onPage({ ...panel, context: { javaScriptEnabled: false } }, async (page) => {
      await page.goto(address('lockout/lo-1.html'))
      expect(await page.locator('.point').first().isVisible()).toBe(true)
      expect(await page.getByText('Turn DISC001 to OFF').isVisible()).toBe(true)
      await page.goto(address('drawings/E-104/2.html#at-PRS204'))
      expect(await page.locator('#at-PRS204 rect').isVisible()).toBe(true)
      await page.goto(address('search.html'))
      expect(await page.getByRole('link', { name: 'Devices' }).first().isVisible()).toBe(true)
    })
  })
})

describe('for everyone', () => {
  test.each([
    ['light', 1024, 768],
    ['dark', 1024, 768],
    ['light', 800, 480],
    ['dark', 800, 480],
  ] as const)(
    'axe finds nothing on any kind of page, %s, %d x %d',
    async (colorScheme, width, height) => {
      await onPage({ width, height, touch: true, context: { colorScheme } }, async (page) => {
        for (const [kind, path] of Object.entries(kindsOfPages)) {
          await page.goto(site.fromDisk(path))
          expect(await violations(page), kind).toEqual([])
        }
      })
    },
    120_000,
  )

  test.each([
    [1024, 768],
    [800, 480],
    [390, 844],
  ])(
    'no page is wider than the screen at %d x %d, and what is touched is large',
    async (width, height) => {
      await onPage({ width, height, touch: true }, async (page) => {
        for (const [kind, path] of Object.entries(kindsOfPages)) {
          await page.goto(site.fromDisk(path))
          expect(await page.evaluate(() => document.documentElement.scrollWidth), kind).toBeLessThanOrEqual(width)
          const small = await page
            .locator('button:visible, .row:visible, .act:visible, .rail a:visible, .question:visible, select:visible, input[type=text]:visible')
            .evaluateAll((all) => all.filter((it) => it.getBoundingClientRect().height < 44).map((it) => it.outerHTML.slice(0, 100)))
          expect(small, kind).toEqual([])
        }
      })
    },
    60_000,
  )

  test('no page uses a class whose styles it does not load', () => expect(classesWithoutStyles(site.dir)).toEqual([]))

  // What a slow panel reads from its stick before a page is there. A page with a meter, questions, a search or a whole list is more than text.
  test('every page of text weighs under 60 kB, with under 15 kB of scripts', () => {
    const texts = pagesOfText(site.dir)
    expect(texts.length).toBeGreaterThan(300)
    // The chapter with every hazard and its signs is as long as the hazards are many.
    const most = (path: string) => (path.endsWith('front/safety.html') ? 95_000 : 60_000)
    // The lists of alarms and drawings have keys of their own.
    const mostScript = (path: string) => (/(alarms|drawings)\.html$/.test(path) ? 17_000 : 15_000)
    const weights = texts.map((path) => ({ path, ...pageWeight(site.dir, path) }))
    expect(weights.filter(({ htmlBytes, styleBytes }) => htmlBytes < 1000 || styleBytes < 10_000)).toEqual([])
    expect(weights.filter((it) => totalBytes(it) > most(it.path) || it.scriptBytes > mostScript(it.path))).toEqual([])
  })
})
