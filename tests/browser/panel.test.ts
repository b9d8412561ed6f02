import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { type MachinePanel, panelOf } from '../../src/model/panel.ts'
import { panelSizes } from '../../src/panel/panel-sizes.ts'
import { panelStyles } from '../../src/site/panel-styles.ts'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import type { openPage } from './chromium.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { panelPageFaults } from './panel-page-faults.ts'
import { usePage } from './use-page.ts'

const site = builtSite(() => buildExample('--no-zip'))

const onPage = (options: Parameters<typeof openPage>[1], act: (page: Page) => Promise<void>) => usePage(site.browser, options, act)

const described = (diagonalInch: number, widthPx: number, heightPx: number, touch: 'gloves' | 'bare' = 'gloves'): MachinePanel => {
  const panel = panelOf({ panel: { diagonalInch, widthPx, heightPx, distanceMm: 600, touch } })
  if (!panel) throw new Error('no panel was described')
  return panel
}

/** As the example machine has it. */
const own = described(15, 1024, 768)
const screen = { width: own.widthPx, height: own.heightPx, touch: true }

/** The styles of the built site are all that depends on the panel, but for the about page: they are put in place of its own. */
function styleFor(panel: MachinePanel): void {
  const file = join(site.dir, 'assets/site.css')
  const text = readFileSync(file, 'utf8')
  const from = text.lastIndexOf(panelStyles(undefined))
  expect(from).toBeGreaterThan(0)
  writeFileSync(file, text.slice(0, from) + panelStyles(panel))
}

/** Capitals of IBM Plex Mono and of Atkinson Hyperlegible, as shares of the font size. */
const labelShare = 0.698 / 0.668

const limitsOn = (panel: MachinePanel, times = 1) => {
  const { rootPx, smallestShare, targetPx } = panelSizes(panel)
  return { targetPx, leastTextPx: rootPx * smallestShare * times, labelShare }
}

async function faultsOf(page: Page, panel: MachinePanel, paths: Iterable<[string, string]>): Promise<string[]> {
  const faults: string[] = []
  for (const [kind, path] of paths) {
    await page.goto(site.fromDisk(path))
    faults.push(...(await panelPageFaults(page, limitsOn(panel))).map((fault) => `${kind}: ${fault}`))
  }
  return faults
}

describe.each([[own], [described(12.1, 1024, 768)], [described(10.1, 1280, 800)], [described(7, 800, 480)], [described(21.5, 1080, 1920)]])(
  'on a panel of $diagonalMm mm with $widthPx × $heightPx, touched with $touch',
  (panel) => {
    const { widthPx: width, heightPx: height } = panel

    test('every kind of page fits: width, text, targets, room for what it says', async () => {
      styleFor(panel)
      await onPage({ width, height, touch: true }, async (page) => {
        expect(await faultsOf(page, panel, Object.entries(kindsOfPages))).toEqual([])
      })
    }, 60_000)

    test('so it does with the largest text, in Spanish, for the left hand', async () => {
      styleFor(panel)
      await onPage({ width, height, touch: true }, async (page) => {
        await page.addInitScript(() => {
          for (const [name, value] of [
            ['text', 'largest'],
            ['hand', 'left'],
          ] as const)
            localStorage.setItem(`fettle.${name}`, value)
        })
        const few = ['start', 'device', 'alarm', 'lockout', 'set-up for a product', 'lesson for a device', 'lockouts', 'devices']
        expect(
          await faultsOf(
            page,
            panel,
            few.map((kind): [string, string] => [kind, `es/${kindsOfPages[kind]}`]),
          ),
        ).toEqual([])
      })
    }, 60_000)

    test('what opens on a page is large enough too', async () => {
      styleFor(panel)
      await onPage({ width, height, touch: true }, async (page) => {
        const faults = () => panelPageFaults(page, limitsOn(panel))
        await page.goto(site.fromDisk('tags/PRS204.html'))
        await page.locator('[data-display-switch]').tap()
        await page.locator('#display').waitFor()
        expect(await faults()).toEqual([])
        await page.locator('[data-display-switch]').tap()
        await page.locator('[data-field]').first().tap()
        expect(await faults()).toEqual([])
        await page.goto(site.fromDisk('search.html'))
        await page.locator('input[name=q]').fill('lift')
        await page.locator('[data-search-results] a').first().waitFor()
        expect(await faults()).toEqual([])
        await page.goto(site.fromDisk('drawings/E-104.html'))
        await page.getByRole('button', { name: 'Full screen' }).tap()
        expect(await faults()).toEqual([])
      })
    }, 60_000)
  },
)

test.each([
  [own, 'gloves'],
  [described(10.1, 1280, 800), 'gloves'],
  // Ten keys for gloves with their gaps are wider than this screen: they are as wide as a bare finger asks for, and high enough for a glove.
  [described(7, 800, 480), 'bare'],
] as const)('the letters of the search on a panel of $diagonalMm mm are wide enough', async (panel, hand) => {
  styleFor(panel)
  await onPage({ width: panel.widthPx, height: panel.heightPx, touch: true }, async (page) => {
    await page.goto(site.fromDisk('search.html'))
    await page.locator('.keys-toggle').tap()
    const sizes = await page
      .locator('.key:visible')
      .evaluateAll((keys) => keys.map((key) => [key.getBoundingClientRect().width, key.getBoundingClientRect().height] as const))
    expect(sizes.length).toBeGreaterThan(30)
    expect(Math.min(...sizes.map(([width]) => width))).toBeGreaterThanOrEqual(panelSizes({ ...panel, touch: hand }).targetPx - 0.5)
    expect(Math.min(...sizes.map(([, height]) => height))).toBeGreaterThanOrEqual(panelSizes(panel).targetPx - 0.5)
  })
})

describe('the sizes of the panel', () => {
  const rootPx = (page: Page) => page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize))

  test('hold on its screen, either way round and with scripts off, and on no other', async () => {
    styleFor(own)
    const { rootPx: asked } = panelSizes(own)
    for (const [width, height, javaScriptEnabled, expected] of [
      [1024, 768, true, asked],
      [1024, 768, false, asked],
      [768, 1024, true, asked],
      [1280, 1024, true, 20],
    ] as const)
      await onPage({ width, height, touch: true, context: { javaScriptEnabled } }, async (page) => {
        await page.goto(site.fromDisk('index.html'))
        expect(await rootPx(page), `${width} × ${height}`).toBeCloseTo(expected, 1)
      })
    // A window on a larger screen.
    await onPage({ ...screen, context: { screen: { width: 1920, height: 1080 } } }, async (page) => {
      await page.goto(site.fromDisk('index.html'))
      expect(await rootPx(page)).toBe(20)
    })
  })

  test('are set by hand where the screen is not known, and taken back', async () => {
    styleFor(own)
    await onPage({ width: 1280, height: 1024, touch: true }, async (page) => {
      await page.goto(site.fromDisk('index.html'))
      await page.locator('[data-display-switch]').tap()
      await page.getByRole('button', { name: 'For the machine' }).tap()
      expect(await rootPx(page)).toBeCloseTo(panelSizes(own).rootPx, 1)
      await page.goto(site.fromDisk('devices.html'))
      expect(await rootPx(page)).toBeCloseTo(panelSizes(own).rootPx, 1)
      await page.locator('[data-display-switch]').tap()
      await page.getByRole('button', { name: 'By the screen' }).tap()
      expect(await rootPx(page)).toBe(20)
    })
  })

  test('stand on the about page', async () => {
    await onPage(screen, async (page) => {
      await page.goto(site.fromDisk('about.html'))
      const text = await page.locator('main').textContent()
      for (const said of [
        '381 mm across (15 in), 1024 × 768 pixels',
        '3.49 mm high, 20 minutes of arc',
        '2.79 mm high, 16 minutes of arc',
        '15 mm at least, for gloves',
      ])
        expect(text).toContain(said)
    })
  })
})
