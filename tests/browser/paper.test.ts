import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type BuiltExample, buildExample } from './build-example.ts'
import { launchChromium } from './chromium.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { type Letters, printedLetters } from './printed-letters.ts'
import { splitParts } from './split-parts.ts'

let example: BuiltExample
let browser: Browser
beforeAll(async () => {
  example = await buildExample()
  browser = await launchChromium()
}, 300_000)
afterAll(async () => {
  await browser?.close()
  example?.remove()
})

async function withPage<T>(address: string, use: (page: Page) => Promise<T>): Promise<T> {
  const page = await browser.newPage({ viewport: { width: 1024, height: 768 } })
  await page.goto(pathToFileURL(join(example.dir, address.split('?')[0] ?? '')).href)
  const made = await use(page)
  await page.close()
  return made
}

/** What the browser prints of a page, sheet by sheet. */
const printed = (address: string, format: 'A4' | 'Letter'): Promise<Letters[][]> =>
  withPage(address, async (page) => printedLetters(await page.pdf({ format })))

/** Pages with many steps or messages. */
const pagesOfSteps = [
  ...['a lockout', 'a short lockout'].map((name, index) => [name, `lockout/lo-${index + 1}.html`] as const),
  ['a procedure', 'procedures/set-up-crate-format.html'],
  ['a procedure with outputs', 'procedures/pusher-wear.html'],
  ['an alarm', 'alarms/A0103.html'],
  ['a lesson', 'checks/check-inductive/PRS204.html'],
  ['a set-up', 'set-up/C4320.html'],
  ['a chapter of messages', 'front/safety.html'],
] as const

const signalWords = new Set(['DANGER', 'WARNING', 'CAUTION', 'NOTICE'])

describe.each(['A4', 'Letter'] as const)('printed from the browser on %s', (format) => {
  test.each(Object.entries(kindsOfPages))(
    '%s has large signal words, no message parted from its word at the foot, and no bar of the screen',
    async (_, address) => {
      const sheets = await printed(address, format)
      expect(sheets.filter((letters) => letters.length === 0)).toEqual([])
      const words = sheets.flat().filter(({ text }) => signalWords.has(text))
      // White letters on a dark ground need 12 pt.
      expect(words.filter(({ pt }) => pt < 12)).toEqual([])
      for (const letters of sheets) {
        const lowest = letters.reduce((low, it) => (it.y < low.y ? it : low))
        expect(signalWords.has(lowest.text)).toBe(false)
      }
      const text = sheets
        .flat()
        .map(({ text }) => text)
        .join(' ')
      for (const said of ['Do a job What is', 'Clear ticks', 'Skip to content']) expect(text).not.toContain(said)
    },
  )

  test.each(pagesOfSteps)('%s has each step, message, source and point whole on a sheet', async (_, address) => {
    const { printed, split } = await withPage(address, (page) => splitParts(page, format))
    expect(printed).toBeGreaterThan(3)
    expect(split).toEqual([])
  })

  test('a device has on paper what it should read, which is folded on the screen', async () => {
    const text = (await printed('tags/PRS204.html', format))
      .flat()
      .map(({ text }) => text)
      .join(' ')
    expect(text).toContain('Should read')
    // The table of its faults goes over two sheets, with its heads on each.
    expect(text.split('Likely fault and next step').length - 1).toBeGreaterThan(1)
    expect(text).toContain('input terminal to 0 V of the card')
  })
})

test('a lockout has the plan of the machine on paper, whose picture is first loaded for it', async () => {
  const letters = (await printed('lockout/lo-1.html', 'A4')).flat()
  expect(letters.map(({ text }) => text).join(' ')).toContain('Machine from above')
})

test('without the rules of print.css steps are split, and the reading back finds it', async () => {
  const { split } = await withPage('lockout/lo-1.html', async (page) => {
    await page.addStyleTag({ content: '@media print { .route-step, .safety, .source, .point { break-inside: auto !important; } }' })
    return splitParts(page, 'A4')
  })
  expect(split).not.toEqual([])
})
