import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type BuiltExample, buildExample } from './build-example.ts'
import { launchChromium } from './chromium.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { type Letters, printedLetters } from './printed-letters.ts'

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

/** What the browser prints of a page, sheet by sheet. */
async function printed(address: string, format: 'A4' | 'Letter'): Promise<Letters[][]> {
  const page = await browser.newPage({ viewport: { width: 1024, height: 768 } })
  await page.goto(pathToFileURL(join(example.dir, address.split('?')[0] ?? '')).href)
  const bytes = await page.pdf({ format })
  await page.close()
  return printedLetters(bytes)
}

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
