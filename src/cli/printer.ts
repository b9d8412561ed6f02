import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type ReadBack, readBack } from '../print/read-back.ts'
import { launchChromium } from './launch-chromium.ts'

/** The first Chromium that prints running heads. */
const firstChromium = 131

/** A printed document, what was read back from it, and the pictures that did not load, each with the id of its article. */
export type Print = ReadBack & { pdf: Uint8Array; lostPictures: { file: string; article: string }[] }

export interface Printer {
  /** Prints a document that lies at the root of the site. */
  print(html: string): Promise<Print>
  close(): Promise<void>
}

/** Starts the Chromium of the machine, or says how to get one. */
export async function startPrinter(siteDir: string): Promise<Printer | { refused: string }> {
  const browser = await launchChromium().catch((error: Error) => error)
  if (browser instanceof Error) return { refused: browser.message }
  const major = Number(browser.version().split('.')[0])
  if (major < firstChromium) {
    await browser.close()
    return { refused: `Chromium ${major} prints no running heads: install ${firstChromium} or newer, or name one in FETTLE_CHROMIUM` }
  }
  const page = await (await browser.newContext({ offline: true })).newPage()
  const file = join(siteDir, 'print.html')
  return {
    async print(html) {
      writeFileSync(file, html)
      await page.goto(pathToFileURL(file).href, { waitUntil: 'load', timeout: 600_000 })
      const lostPictures = await page.evaluate(lookAround)
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, outline: true, tagged: true })
      return { ...(await readBack(pdf)), pdf, lostPictures }
    },
    close: () => browser.close(),
  }
}

/** Loads every font, as one that comes late would print in another, and names the pictures that are broken. Runs in the page. */
async function lookAround(): Promise<Print['lostPictures']> {
  // Fonts of the computer that stand in until those of the site are there may be absent.
  const own = [...document.fonts].filter(({ family }) => !/^["']?As /.test(family))
  await Promise.all(own.map((font) => font.load()))
  await document.fonts.ready
  return [...document.images]
    .filter(({ complete, naturalWidth }) => !complete || naturalWidth === 0)
    .map((image) => ({ file: image.getAttribute('src') ?? '', article: image.closest('article')?.id ?? '' }))
}
