import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { writeManifest } from '../../src/bundle/manifest.ts'
import { writeStartPage } from '../../src/cli/start-page.ts'
import { violations } from './axe.ts'
import { launchChromium } from './chromium.ts'
import { usePage } from './use-page.ts'

let browser: Browser
let dir: string
/** Where pictures are put to be looked at; without it none are taken. */
const pictures = process.env.FETTLE_PICTURES
const address = (name: string) => pathToFileURL(join(dir, name)).href

const machines = [
  {
    id: 'rcw-400',
    name: { en: 'Returnable-crate washer', es: 'Lavadora de cajas retornables' },
    model: 'RCW 400',
    serial: '0400-017',
    languages: ['en', 'es'],
  },
  {
    id: 'rcw-400-b',
    name: { en: 'Returnable-crate washer', es: 'Lavadora de cajas retornables' },
    model: 'RCW 400',
    serial: '0400-023',
    languages: ['en', 'es'],
  },
  {
    id: 'tray-2',
    name: { es: 'Dispensador de bandejas para la línea de envasado de alimentos preparados' },
    model: 'TD-2',
    serial: 'TD2-0009',
    languages: ['es'],
  },
  { id: 'slit-9', name: { en: 'Roll slitter' }, model: 'RS 9', serial: '0105', languages: ['en'] },
]

beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  for (const { languages, ...machine } of machines) {
    for (const [index, language] of languages.entries()) {
      const folder = join(dir, machine.id, index === 0 ? '' : language)
      mkdirSync(folder, { recursive: true })
      writeFileSync(join(folder, 'index.html'), `<!doctype html><title>${machine.serial} ${language}</title>`)
    }
    writeManifest(join(dir, machine.id), {
      tool: 'fettle 0',
      machine: { ...machine, languages, revision: 'D' },
      data: [],
      check: { errors: 0, warnings: 0, notes: 0 },
      checkValue: '0123 4567 89ab',
    })
  }
  expect(await writeStartPage(dir)).toEqual({ machines: 4 })
  browser = await launchChromium()
}, 60_000)
afterAll(async () => {
  await browser?.close()
  rmSync(dir, { recursive: true, force: true })
})

describe.each(['light', 'dark'] as const)('in the %s theme', (colorScheme) => {
  test.each([
    [1280, 800],
    [1024, 768],
    [360, 740],
  ] as const)('axe finds nothing, nothing is too wide and links fit a finger: %i x %i', async (width, height) => {
    await usePage(browser, { width, height, touch: true, context: { colorScheme } }, async (page) => {
      for (const name of ['index.html', 'index.es.html']) {
        await page.goto(address(name))
        expect(await violations(page)).toEqual([])
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
        const sizes = await page
          .locator('a')
          .evaluateAll((all) => all.map((it) => it.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)))
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(48)
        if (pictures) await page.screenshot({ path: join(pictures, `start-${colorScheme}-${width}-${name}.png`), fullPage: true })
      }
    })
  })
})

test('the list is shortened by serial number or model, and says how many are left', async () => {
  await usePage(browser, { width: 1024, height: 768, touch: true }, async (page) => {
    await page.goto(address('index.html'))
    const shown = () => page.locator('.machines > li:visible .machine .mono:nth-child(2)').allTextContents()
    const left = async (typed: string) => {
      await page.getByLabel('Filter').fill(typed)
      return [await shown(), await page.getByRole('status').textContent()]
    }
    expect(await left('')).toEqual([
      ['RCW 400', '0400-017', 'D', 'RCW 400', '0400-023', 'D', 'RS 9', '0105', 'D', 'TD-2', 'TD2-0009', 'D'],
      '4 shown',
    ])
    expect(await left('023')).toEqual([['RCW 400', '0400-023', 'D'], '1 shown'])
    expect(await left('td-2')).toEqual([['TD-2', 'TD2-0009', 'D'], '1 shown'])
    expect(await left('none')).toEqual([[], 'Nothing in this list fits.'])
  })
})

test('without scripts the whole list stands there, without a field that does nothing', async () => {
  await usePage(browser, { width: 1024, height: 768, touch: true, context: { javaScriptEnabled: false } }, async (page) => {
    await page.goto(address('index.es.html'))
    await expect.poll(() => page.locator('.machines > li:visible').count()).toBe(4)
    expect(await page.locator('.filter').isVisible()).toBe(false)
    await page.getByRole('link', { name: 'RCW 400 N.º de serie 0400-023' }).click()
    expect(await page.title()).toBe('0400-023 es')
  })
})

test('each language of a machine is one touch away, with its name for a reader who does not see', async () => {
  await usePage(browser, { width: 1024, height: 768, touch: true }, async (page) => {
    await page.goto(address('index.html'))
    await page.getByRole('group', { name: 'Languages of Returnable-crate washer, 0400-017' }).getByRole('link', { name: 'Español' }).click()
    expect(await page.title()).toBe('0400-017 es')
  })
})
