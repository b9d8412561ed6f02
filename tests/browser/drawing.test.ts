import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { CDPSession, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { violations } from './axe.ts'
import { buildExample } from './build-example.ts'
import { buildSoundMachine } from './build-sound-machine.ts'
import { builtSite } from './built-site.ts'
import { usePage } from './use-page.ts'

const panel = { width: 1024, height: 768, touch: true }
const smallPanel = { width: 800, height: 480, touch: true }

const site = builtSite(() => buildExample('--no-zip'))

/** Opens a page of the example from disk and acts on it; nothing may go wrong there. */
const onPage = (path: string, act: (page: Page) => Promise<void>, options = panel) =>
  usePage(site.browser, options, async (page) => {
    await page.goto(site.fromDisk(path))
    await act(page)
  })

/** A finger on the screen, as the browser gets it from a panel. */
async function drag(page: Page, from: readonly [number, number], to: readonly [number, number]): Promise<void> {
  const finger = await page.context().newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove', [x, y]: readonly [number, number]) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] })
  await touch('touchStart', from)
  for (let step = 1; step <= 8; step++) {
    await touch('touchMove', [from[0] + ((to[0] - from[0]) * step) / 8, from[1] + ((to[1] - from[1]) * step) / 8])
    await page.waitForTimeout(20)
  }
  await lift(finger)
}

const lift = (finger: CDPSession) => finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })

async function pinch(page: Page, [x, y]: readonly [number, number], fromPx: number, toPx: number): Promise<void> {
  const fingers = await page.context().newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove', apart: number) =>
    fingers.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: [
        { x: x - apart / 2, y, id: 0 },
        { x: x + apart / 2, y, id: 1 },
      ],
    })
  await touch('touchStart', fromPx)
  for (let step = 1; step <= 8; step++) await touch('touchMove', fromPx + ((toPx - fromPx) * step) / 8)
  await lift(fingers)
}

/** After the last enlargement the sheet is laid out anew. */
const laidOut = (page: Page) => expect.poll(() => page.locator('[data-sheet-drawing]').evaluate((sheet) => sheet.style.transform)).toBe('')

const sheetBox = async (page: Page) => {
  const box = await page.locator('[data-sheet-drawing]').boundingBox()
  if (!box) throw new Error('the sheet is not shown')
  return box
}

describe('the plan', () => {
  test('two touches lead from the start to every device on it', async () => {
    await onPage('index.html', async (page) => {
      const areas = await page.locator('.start-plan .area-list a').evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href))
      const onPlan = await page
        .locator('.plan .plan-area')
        .evaluateAll((links) => links.map((link) => new URL(link.getAttribute('href') ?? '', location.href).href))
      expect(onPlan).toEqual(areas)
      const reached: string[] = []
      for (const area of areas) {
        await page.goto(area)
        reached.push(...(await page.locator('.plan-wide .plan-label').evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''))))
      }
      expect(reached.length).toBeGreaterThan(100)
      expect(reached.filter((href) => !/^\.\.\/tags\/[\w-]+\.html$/.test(href))).toEqual([])
    })
  })

  test.each([panel, smallPanel])('an area is touched on it, then a device: $width x $height', async (size) => {
    await onPage(
      'index.html',
      async (page) => {
        await page.locator('.plan').scrollIntoViewIfNeeded()
        await page.locator('.plan').getByRole('link', { name: 'Destacking lift' }).tap()
        await expect.poll(() => page.url()).toMatch(/areas\/lift\.html$/)
        await page.locator('.plan-label:visible', { hasText: 'CYL213' }).locator('rect').tap()
        await expect.poll(() => page.url()).toMatch(/tags\/CYL213\.html$/)
        expect(await page.locator('.device-plan .plan-label text').textContent()).toBe('CYL213')
      },
      size,
    )
  })

  test('each device of an area is marked once, in the list too, and its mark is large enough for a finger', async () => {
    for (const size of [panel, smallPanel]) {
      await onPage(
        'areas/cabinet.html',
        async (page) => {
          const labels = page.locator('.plan-label:visible')
          const listed = await page.locator('.area-devices .row .label').allTextContents()
          expect(await labels.locator('text').allTextContents()).toEqual(listed)
          for (const box of await labels.locator('rect').all()) expect((await box.boundingBox())?.height).toBeGreaterThanOrEqual(42)
        },
        size,
      )
    }
  })

  test('keys go from label to label in the order of the list, and open one', async () => {
    await onPage('areas/infeed.html', async (page) => {
      await page.locator('[data-sheet-window]').focus()
      await page.keyboard.press('Tab')
      expect(await focused(page)).toBe('MTR101')
      expect(await page.locator('.plan-label:focus > rect').evaluate((box) => Number.parseFloat(getComputedStyle(box).strokeWidth))).toBeGreaterThan(
        4,
      )
      await page.keyboard.press('Tab')
      expect(await focused(page)).toBe('PEC102')
      await page.keyboard.press('Enter')
      await expect.poll(() => page.url()).toMatch(/tags\/PEC102\.html$/)
    })
  })

  test('buttons enlarge it, and a finger moves it without opening a device', async () => {
    await onPage('areas/lift.html', async (page) => {
      const before = await sheetBox(page)
      await page.getByRole('button', { name: 'Larger' }).tap()
      const larger = await sheetBox(page)
      expect(larger.width).toBeCloseTo(before.width * 1.6, -1)
      await laidOut(page)
      expect((await sheetBox(page)).width).toBeCloseTo(larger.width, -1)
      await drag(page, [512, 450], [380, 330])
      await expect.poll(async () => (await sheetBox(page)).x).toBeLessThan(larger.x - 60)
      expect(page.url()).toMatch(/areas\/lift\.html$/)
    })
  })

  test('paper has numbers on the plan and in the list', async () => {
    await onPage('areas/lift.html', async (page) => {
      await page.emulateMedia({ media: 'print' })
      const numbers = await page.locator('.plan-label:visible text').allTextContents()
      expect(numbers).toEqual(numbers.map((_, index) => String(index + 1)))
      expect(await page.locator('.plan-row-number:visible').allTextContents()).toEqual(numbers)
    })
  })

  test('a phone has numbers, and a touch on one opens its device', async () => {
    await onPage(
      'areas/lift.html',
      async (page) => {
        const first = await page.locator('.area-devices .row').first().getAttribute('href')
        await page.locator('.plan-label:visible').first().locator('rect').tap()
        await expect.poll(() => page.url()).toContain(first?.replace('..', ''))
      },
      { width: 390, height: 844, touch: true },
    )
  })

  test.each(['light', 'dark'] as const)('axe finds nothing on it: %s', async (colorScheme) => {
    await usePage(site.browser, { ...panel, context: { colorScheme } }, async (page) => {
      for (const path of ['areas/cabinet.html', 'tags/PRS204.html', 'index.html']) {
        await page.goto(site.fromDisk(path))
        expect(await violations(page), path).toEqual([])
      }
    })
  })
})

const focused = (page: Page) => page.evaluate(() => document.activeElement?.querySelector('text')?.textContent)

describe('drawings', () => {
  test.each(['on the page', 'on the whole screen'])('a touched tag opens its device, and a sheet that was moved opens none: %s', async (where) => {
    await onPage('drawings/E-104/2.html', async (page) => {
      if (where !== 'on the page') await page.getByRole('button', { name: 'Full screen' }).tap()
      await page.getByRole('button', { name: 'Larger' }).tap()
      await page.getByRole('button', { name: 'Larger' }).tap()
      await laidOut(page)
      const mark = page.locator('#at-PRS204 rect')
      await mark.scrollIntoViewIfNeeded()
      const before = await mark.boundingBox()
      if (!before) throw new Error('the tag is not in view')
      const from = [before.x + before.width / 2, before.y + before.height / 2] as const
      await drag(page, from, [from[0] + 10, from[1] - 120])
      await expect.poll(async () => (await mark.boundingBox())?.y).toBeLessThan(before.y - 60)
      expect(page.url()).toMatch(/E-104\/2\.html$/)
      await mark.tap()
      await expect.poll(() => page.url()).toMatch(/tags\/PRS204\.html$/)
    })
  })

  test('the mouse moves a sheet and opens no device by it, as some panels send a finger', async () => {
    await onPage('drawings/E-104/2.html', async (page) => {
      await page.keyboard.press('+')
      await page.keyboard.press('+')
      await laidOut(page)
      const mark = page.locator('#at-PRS204 rect')
      await mark.scrollIntoViewIfNeeded()
      const { x, y } = (await mark.boundingBox()) ?? { x: 0, y: 0 }
      await page.mouse.move(x + 5, y + 5)
      await page.mouse.down()
      await page.mouse.move(x - 55, y + 5, { steps: 5 })
      await page.mouse.up()
      expect((await mark.boundingBox())?.x).toBeCloseTo(x - 60, 0)
      expect(page.url()).toMatch(/E-104\/2\.html$/)
      await page.mouse.click(x - 55, y + 5)
      await expect.poll(() => page.url()).toMatch(/tags\/PRS204\.html$/)
    })
  })

  test('two fingers enlarge a sheet round the place between them', async () => {
    await onPage('drawings/E-104/2.html', async (page) => {
      const mark = page.locator('#at-PRS204 rect')
      const before = await mark.boundingBox()
      if (!before) throw new Error('the tag is not in view')
      const middle = [before.x + before.width / 2, before.y + before.height / 2] as const
      await pinch(page, middle, 80, 240)
      await expect.poll(async () => (await mark.boundingBox())?.width).toBeCloseTo(before.width * 3, -1)
      const after = await mark.boundingBox()
      expect(Math.abs((after?.x ?? 0) + (after?.width ?? 0) / 2 - middle[0])).toBeLessThan(12)
      expect(page.url()).toMatch(/E-104\/2\.html$/)
    })
  })

  test('keys move and enlarge a sheet, and Escape leaves the whole screen', async () => {
    await onPage('drawings/E-104/2.html', async (page) => {
      await page.getByRole('button', { name: 'Full screen' }).tap()
      await page.keyboard.press('+')
      const { x, y, width } = await sheetBox(page)
      await page.keyboard.press('ArrowRight')
      await page.keyboard.press('ArrowDown')
      const moved = await sheetBox(page)
      expect([moved.x < x, moved.y < y]).toEqual([true, true])
      await page.keyboard.press('-')
      expect((await sheetBox(page)).width).toBeLessThan(width)
      const middleOf = async () => {
        const [sheet, area] = [await sheetBox(page), await page.locator('[data-sheet-window]').boundingBox()]
        return area ? (area.x + area.width / 2 - sheet.x) / sheet.width : 0
      }
      await page.keyboard.press('+')
      await page.keyboard.press('ArrowLeft')
      const before = await middleOf()
      await page.keyboard.press('Escape')
      expect(await page.locator('[data-sheet].full').count()).toBe(0)
      expect(await middleOf()).toBeCloseTo(before, 1)
    })
  })

  test.each(['as it opens', 'enlarged', 'on the whole screen'])('no swipe over a sheet leaves the page: %s', async (how) => {
    await onPage('drawings/E-104.html', async (page) => {
      await page.goto(site.fromDisk('drawings/E-104/2.html'))
      if (how === 'on the whole screen') await page.getByRole('button', { name: 'Full screen' }).tap()
      if (how !== 'as it opens') await page.getByRole('button', { name: 'Larger' }).tap()
      await laidOut(page)
      for (const [from, to] of [
        [200, 900],
        [200, 900],
        [900, 100],
        [900, 100],
      ] as const) {
        await drag(page, [from, 400], [to, 400])
        await page.waitForTimeout(500)
        expect(page.url()).toMatch(/E-104\/2\.html$/)
      }
    })
  })

  test('a reference opens the sheet with the device marked, in view and readable', async () => {
    for (const size of [panel, smallPanel]) {
      await onPage(
        'tags/PRS204.html',
        async (page) => {
          await page.getByRole('link', { name: /Find it on the drawing/ }).tap()
          await expect.poll(() => page.url()).toMatch(/E-104\/2\.html#at-PRS204$/)
          const mark = page.locator('#at-PRS204 rect')
          const area = page.locator('[data-sheet-window]')
          await expect.poll(async () => (await mark.boundingBox())?.height).toBeGreaterThanOrEqual(28)
          const [inner, outer] = [await mark.boundingBox(), await area.boundingBox()]
          if (!inner || !outer) throw new Error('the sheet is not shown')
          expect(inner.x >= outer.x && inner.x + inner.width <= outer.x + outer.width).toBe(true)
          expect(inner.y >= outer.y && inner.y + inner.height <= Math.min(outer.y + outer.height, size.height - 58)).toBe(true)
        },
        size,
      )
    }
  })
})

test('a sheet of a PDF opens with its small picture, and has the large one before it is enlarged beyond that', async () => {
  const machine = await buildSoundMachine({
    'drawings/E-9.pdf': readFileSync('tests/fixtures/drawings/chromium.pdf'),
    'data/drawings.csv': `${readFileSync('tests/fixtures/sound-machine/data/drawings.csv', 'utf8').trimEnd()}\nE-9,Pressure switch,schematic,1,A\n`,
  })
  try {
    await usePage(site.browser, panel, async (page) => {
      const shown = () => page.locator('image.sheet-picture').getAttribute('href')
      await page.goto(pathToFileURL(join(machine.dir, 'drawings/E-9.html')).href)
      expect(await shown()).toBe('../sheets/E-9.1.small.webp')
      await page.getByRole('button', { name: 'Larger' }).tap()
      await expect.poll(shown).toBe('../sheets/E-9.1.svg')
    })
  } finally {
    machine.remove()
  }
})

describe('the search in a drawing', () => {
  test('keys on the screen find a tag, mark it, and buttons lead from sheet to sheet', async () => {
    await onPage('drawings/E-104.html', async (page) => {
      await page.getByRole('button', { name: 'Full screen' }).tap()
      await page.getByRole('button', { name: 'Search drawing' }).tap()
      for (const key of ['P', 'R', 'S', '2', '0', '4']) await page.locator('.key', { hasText: new RegExp(`^${key}$`) }).tap()
      await expect.poll(() => status(page)).toMatch(/^\d+ found$/)
      const sheets = await page.locator('[data-find-sheets] a').allTextContents()
      expect(sheets).toEqual(expect.arrayContaining([expect.stringMatching(/^Sheet 2: \d+$/)]))
      await page.locator('.key-word', { hasText: 'Find' }).tap()
      await expect.poll(() => page.url()).toMatch(/#find=PRS204&at=\d+$/)
      await expect.poll(() => status(page)).toMatch(/^\d+ of \d+$/)
      expect(await page.locator('.keys').isVisible()).toBe(false)
      await page.locator('[data-find-sheets] a', { hasText: 'Sheet 2' }).tap()
      await expect.poll(() => page.url()).toMatch(/E-104\/2\.html#find=PRS204&at=\d+$/)
      await expect.poll(() => page.locator('.hit-here').count()).toBe(1)
      expect(await page.locator('[data-sheet].full').count()).toBe(1)
      await expect.poll(() => isShown(page, '.hit-here')).toBe(true)
      // The mark lies over the tag and lets the touch through.
      await page.locator('#at-PRS204 rect').first().tap()
      await expect.poll(() => page.url()).toMatch(/tags\/PRS204\.html$/)
    })
  })

  test('it goes from hit to hit over all sheets and round again', async () => {
    await onPage('drawings/E-105.html', async (page) => {
      await page.getByRole('button', { name: 'Search drawing' }).click()
      await page.getByRole('searchbox').fill('con')
      await page.keyboard.press('Enter')
      await expect.poll(() => status(page)).toMatch(/^1 of \d+$/)
      const count = Number(/\d+$/.exec((await status(page)) ?? '')?.[0])
      expect(count).toBeGreaterThan(2)
      const seen: string[] = []
      for (let step = 0; step < count; step++) {
        const before = await status(page)
        await page.getByRole('button', { name: 'Next', exact: true }).tap()
        await expect.poll(() => status(page)).toMatch(/^\d+ of \d+$/)
        await expect.poll(() => status(page)).not.toBe(before)
        await expect.poll(() => isShown(page, '.hit-here')).toBe(true)
        seen.push((await status(page)) ?? '')
      }
      expect(seen).toEqual(Array.from({ length: count }, (_, index) => `${((index + 1) % count) + 1} of ${count}`))
    })
  })

  test('what stands nowhere is said, and the end of the search takes its marks away', async () => {
    await onPage('drawings/E-104.html', async (page) => {
      await page.getByRole('button', { name: 'Search drawing' }).click()
      await page.getByRole('searchbox').fill('XYZ999')
      await expect.poll(() => status(page)).toBe('It stands on no sheet of this drawing.')
      await page.getByRole('searchbox').fill('X1')
      await expect.poll(() => page.locator('.hit').count()).toBeGreaterThan(1)
      expect(await violations(page)).toEqual([])
      await page.getByRole('button', { name: 'End search' }).tap()
      await expect.poll(() => page.locator('.hit').count()).toBe(0)
      expect(await page.getByRole('searchbox').isVisible()).toBe(false)
    })
  })

  test('a reference on a sheet leads to the sheet that it names', async () => {
    await onPage('drawings/E-104/2.html', async (page) => {
      await page.getByRole('link', { name: 'E-102 Sheet 1' }).locator('rect').tap()
      await expect.poll(() => page.url()).toMatch(/drawings\/E-102\.html$/)
    })
  })
})

const status = (page: Page) => page.locator('[data-find-status]').textContent()

const isShown = (page: Page, selector: string) =>
  page.evaluate((part) => {
    const [inner, outer] = [part, '[data-sheet-window]'].map((it) => document.querySelector(it)?.getBoundingClientRect())
    return (
      inner !== undefined &&
      outer !== undefined &&
      inner.top >= outer.top &&
      inner.bottom <= outer.bottom &&
      inner.left >= outer.left &&
      inner.right <= outer.right
    )
  }, selector)
