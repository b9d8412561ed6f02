import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { violations } from './axe.ts'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import type { openPage } from './chromium.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { layoutShift } from './layout-shift.ts'
import { usePage } from './use-page.ts'

/** The panel of the example machine. */
const panel = { width: 1024, height: 768, touch: true }
const office = { width: 1440, height: 900, touch: false }
/** After this time the example goes back to its start; the warning comes a minute before. */
const backMin = 10

const site = builtSite(() => buildExample('--no-zip'))

const onPage = (options: Parameters<typeof openPage>[1], act: (page: Page) => Promise<void>) => usePage(site.browser, options, act)
const choose = async (page: Page, choice: string) => {
  if (await page.locator('#display').isHidden()) await page.locator('[data-display-switch]').tap()
  await page.locator('#display').waitFor()
  await page.locator('#display').getByRole('button', { name: choice, exact: true }).tap()
}
/** By its place in the window: a locator's tap scrolls the page first, as no finger does. */
const touch = async (page: Page, selector: string) => {
  const box = await page.locator(selector).first().boundingBox()
  if (!box) throw new Error(`${selector} is not on the page`)
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2)
}
const textPx = (page: Page) => page.evaluate(() => Number.parseFloat(getComputedStyle(document.body).fontSize))

describe('what a reader sets', () => {
  test('larger text comes in two steps, stays on every page, and is taken back', async () => {
    await onPage(panel, async (page) => {
      await page.goto(site.fromDisk('lockout/lo-2.html'))
      const usual = await textPx(page)
      await choose(page, 'Larger')
      expect(await textPx(page)).toBeCloseTo(usual * 1.2, 1)
      await choose(page, 'Largest')
      expect(await page.getByRole('button', { name: 'Largest', pressed: true }).count()).toBe(1)
      await page.goto(site.fromDisk('es/tags/PRS204.html'))
      expect(await textPx(page)).toBeCloseTo(usual * 1.4, 1)
      await choose(page, 'Normal')
      await page.reload()
      expect(await textPx(page)).toBeCloseTo(usual, 1)
    })
  })

  test('dark and light stay, whatever the screen is set to', async () => {
    await onPage({ ...panel, context: { colorScheme: 'light' } }, async (page) => {
      const isDark = () => page.evaluate(() => getComputedStyle(document.documentElement).colorScheme === 'dark')
      await page.goto(site.fromDisk('index.html'))
      await choose(page, 'Dark')
      await page.goto(site.fromDisk('alarms.html'))
      expect(await isDark()).toBe(true)
      await choose(page, 'As the screen is set')
      expect(await isDark()).toBe(false)
    })
  })

  test('for the left hand, ticks, keys and tools stand on the left', async () => {
    await onPage(panel, async (page) => {
      const left = async (selector: string) => (await page.locator(selector).first().boundingBox())?.x ?? Number.NaN
      await page.goto(site.fromDisk('lockout/lo-2.html'))
      const pairs: [string, string][] = [
        ['.point-tick', '.point-number'],
        ['.route-tick', '.route-text'],
        ['.plate-display', '.plate'],
      ]
      for (const [held, beside] of pairs) expect(await left(held), held).toBeGreaterThan(await left(beside))
      await choose(page, 'Left hand')
      for (const [held, beside] of pairs) expect(await left(held), held).toBeLessThan(await left(beside))
      await page.goto(site.fromDisk('search.html'))
      expect(await left('.search-form button')).toBeLessThan(await left('.search-form input'))
      await page.locator('.keys-toggle').tap()
      expect(await left('.keys-numbers')).toBeLessThan(await left('.keys-letters'))
    })
  })

  test('with scripts off there is no choice that does nothing', async () => {
    await onPage({ ...panel, context: { javaScriptEnabled: false } }, async (page) => {
      await page.goto(site.fromDisk('index.html'))
      expect(await page.locator('[data-display-switch]').isVisible()).toBe(false)
      expect(await page.locator('#display').isVisible()).toBe(false)
    })
  })

  test('axe finds nothing while the choices are open', async () => {
    await onPage(panel, async (page) => {
      await page.goto(site.fromDisk('devices.html'))
      await choose(page, 'Largest')
      expect(await violations(page)).toEqual([])
    })
  })
})

describe('another language', () => {
  test('shows the same block at the same height, and the way back too', async () => {
    await onPage(panel, async (page) => {
      await page.goto(site.fromDisk('front/safety.html'))
      const third = page.locator('.hazard-card').nth(3)
      await third.evaluate((element) => scrollTo(0, element.getBoundingClientRect().top + scrollY - 90))
      const top = async () => Math.round((await third.boundingBox())?.y ?? Number.NaN)
      await touch(page, 'a.plate-language')
      await expect.poll(() => page.url()).toMatch(/es\/front\/safety\.html$/)
      await expect.poll(async () => Math.abs((await top()) - 90)).toBeLessThan(80)
      await touch(page, 'a.plate-language')
      await expect.poll(() => page.url()).toMatch(/rcw-400\/front\/safety\.html$/)
      await expect.poll(async () => Math.abs((await top()) - 90)).toBeLessThan(80)
    })
  })

  test('at the top it stays at the top, and a page reached in another way starts there', async () => {
    await onPage(panel, async (page) => {
      await page.goto(site.fromDisk('devices.html'))
      await touch(page, 'a.plate-language')
      await expect.poll(() => page.url()).toMatch(/es\/devices\.html$/)
      await page.waitForLoadState('load')
      await page.evaluate(() => scrollTo(0, 900))
      await touch(page, 'a.plate-language')
      await expect.poll(() => page.url()).toMatch(/rcw-400\/devices\.html$/)
      await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(500)
      await page.goto(site.fromDisk('es/devices.html'))
      expect(await page.evaluate(() => scrollY)).toBe(0)
    })
  })
})

describe('left alone, the screen of the machine', () => {
  /** Opens a page with a clock of its own, acts, and lets minutes pass. */
  const afterAct = (
    path: string,
    act: (page: Page) => Promise<void>,
    then: (page: Page, pass: (minutes: number) => Promise<void>) => Promise<void>,
    options: Parameters<typeof openPage>[1] = panel,
  ) =>
    onPage(options, async (page) => {
      await page.clock.install({ time: 0 })
      await page.goto(site.fromDisk(path))
      await act(page)
      await then(page, (minutes) => page.clock.runFor(minutes * 60_000))
    })
  const nothing = async () => {}
  const warning = (page: Page) => page.getByRole('button', { name: 'Stay here' })

  test('warns, and goes back to the start of its language', async () => {
    await afterAct('devices.html', nothing, async (page, pass) => {
      await pass(backMin - 1.1)
      expect(await warning(page).isVisible()).toBe(false)
      await pass(0.2)
      expect(await warning(page).isVisible()).toBe(true)
      expect((await warning(page).boundingBox())?.height).toBeGreaterThanOrEqual(102)
      await pass(1)
      await expect.poll(() => page.url()).toMatch(/rcw-400\/index\.html$/)
    })
  })

  test('stays when anything is touched, and that touch does nothing else', async () => {
    await afterAct('es/devices.html', nothing, async (page, pass) => {
      await pass(backMin - 0.5)
      await page.touchscreen.tap(200, 740)
      expect(await page.locator('[data-stay]').isVisible()).toBe(false)
      await pass(backMin - 1.5)
      expect(await page.locator('[data-stay]').isVisible()).toBe(false)
      expect(page.url()).toMatch(/es\/devices\.html$/)
      await pass(1)
      await page.keyboard.press('Enter')
      expect(await page.locator('[data-stay]').isVisible()).toBe(false)
      expect(page.url()).toMatch(/es\/devices\.html$/)
    })
  })

  test.each<[string, string, (page: Page) => Promise<void>]>([
    ['a lockout', 'lockout/lo-2.html', nothing],
    ['a drawing', 'drawings/E-104.html', nothing],
    ['the start page', 'index.html', nothing],
    ['a job with a tick', 'procedures/set-up-crate-format.html', (page) => page.locator('.route-tick').first().tap()],
    [
      'a checkout with a reading',
      'tags/PRS204.html',
      async (page) => {
        await page.locator('[data-field]').first().tap()
        for (const key of ['2', '4']) await page.locator(`.meter-keys[open] [data-key="${key}"]`).tap()
        await page.locator('.meter-keys[open] [data-keys-take]').tap()
      },
    ],
    ['a lesson with an answer', 'lessons/machine-tour.html', (page) => page.locator('.quiz-choice').first().tap()],
  ])('never leaves %s', async (_, path, act) => {
    await afterAct(path, act, async (page, pass) => {
      const url = page.url()
      await pass(3 * backMin)
      expect(await page.locator('[data-stay]').isVisible()).toBe(false)
      expect(page.url()).toBe(url)
    })
  })

  test('leaves a job and a checkout on which nothing was begun', async () => {
    for (const path of ['procedures/set-up-crate-format.html', 'tags/PRS204.html'])
      await afterAct(path, nothing, async (page, pass) => {
        await pass(backMin + 0.5)
        await expect.poll(() => page.url(), { message: path }).toMatch(/index\.html$/)
      })
  })

  test('is the only one that goes back: an office screen stays', async () => {
    await afterAct(
      'devices.html',
      nothing,
      async (page, pass) => {
        await pass(3 * backMin)
        expect(page.url()).toMatch(/devices\.html$/)
      },
      office,
    )
  })
})

test('no swipe leaves a page, nothing moves by itself, and every page has the way home', async () => {
  await onPage({ ...panel, context: { reducedMotion: 'reduce' } }, async (page) => {
    for (const [kind, path] of Object.entries(kindsOfPages)) {
      await page.goto(site.fromDisk(path))
      const found = await page.evaluate(() => {
        const all = [...document.querySelectorAll('html, body, body *')]
        const swiped = all.filter((it) => {
          const { overscrollBehaviorX } = getComputedStyle(it)
          // A box hands a swipe on to the page; a box that keeps it lets the browser take it as the way back.
          return overscrollBehaviorX !== (it.matches('html, body') ? 'none' : 'auto')
        })
        const moving = all.filter((it) => {
          const { animationName, transitionDuration } = getComputedStyle(it)
          return animationName !== 'none' || !/^0s(, 0s)*$/.test(transitionDuration)
        })
        return [...swiped, ...moving].map((it) => it.outerHTML.slice(0, 80))
      })
      expect(found, kind).toEqual([])
      expect(await page.locator('.plate').getAttribute('href'), kind).toMatch(/index\.html$/)
    }
  })
})

test('in forced colours what is chosen, ticked or here is told from the rest', async () => {
  await onPage({ ...panel, context: { forcedColors: 'active' } }, async (page) => {
    await page.goto(site.fromDisk('devices.html'))
    const ground = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((element) => getComputedStyle(element).backgroundColor)
    expect(await ground('.rail a[aria-current]')).not.toBe(await ground('.rail a:not([aria-current])'))
    expect(await ground('.ways a[aria-current]')).not.toBe(await ground('.ways a:not([aria-current])'))
    expect(await ground('.plate-language[aria-current]')).not.toBe(await ground('a.plate-language'))
    await choose(page, 'Usual')
    expect(await ground('#display [aria-pressed=true]')).not.toBe(await ground('#display [aria-pressed=false]'))
  })
})

test('nothing moves while a page comes up on a slow panel', async () => {
  const moved: [string, number][] = []
  for (const [kind, path] of Object.entries(kindsOfPages)) {
    // What comes in pieces on a busy computer is given another try; what a script or a font moves, it moves each time.
    const shifts: number[] = []
    while (shifts.length < 3 && Math.min(1, ...shifts) >= 0.1)
      await onPage(panel, async (page) => {
        await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: 6 })
        await page.goto(site.fromDisk(path))
        await page.evaluate(() => document.fonts.ready.then(() => undefined))
        // The form of the trainer takes the place of the lists that are there without scripts.
        if (kind === 'planning') await page.locator('[data-planning]').waitFor()
        shifts.push(await layoutShift(page))
      })
    if (Math.min(...shifts) >= 0.1) moved.push([kind, Math.min(...shifts)])
  }
  expect(moved).toEqual([])
}, 240_000)
