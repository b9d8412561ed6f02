import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type ReadBack, readBack } from '../print/read-back.ts'
import { launchChromium } from './launch-chromium.ts'

/** The first Chromium that prints running heads. */
const firstChromium = 131

/** What a document shows before it is printed. */
interface Seen {
  /** The pictures that did not load, each with the id of its article. */
  lostPictures: { file: string; article: string }[]
  /** Size of its largest letters in points, drawings apart. */
  largestPt: number
}

/** A printed document, and what was read back from it. */
export type Print = ReadBack & Seen & { pdf: Uint8Array }

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
  await page.emulateMedia({ media: 'print' })
  const file = join(siteDir, 'print.html')
  return {
    async print(html) {
      writeFileSync(file, html)
      await page.goto(pathToFileURL(file).href, { waitUntil: 'load', timeout: 600_000 })
      const seen = await page.evaluate(lookAround)
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, outline: true, tagged: true })
      return { ...(await readBack(pdf)), ...seen, pdf }
    },
    close: () => browser.close(),
  }
}

/** Loads every font, as one that comes late would print in another, names the pictures that are broken, and measures the letters. Runs in the page. */
async function lookAround(): Promise<Seen> {
  // Fonts of the computer that stand in until those of the site are there may be absent.
  const own = [...document.fonts].filter(({ family }) => !/^["']?As /.test(family))
  await Promise.all(own.map((font) => font.load()))
  await document.fonts.ready
  const lostPictures = [...document.images]
    .filter(({ complete, naturalWidth }) => !complete || naturalWidth === 0)
    .map((image) => ({ file: image.getAttribute('src') ?? '', article: image.closest('article')?.id ?? '' }))
  const holdsText = ({ childNodes }: Element) => [...childNodes].some((node) => node instanceof Text && node.data.trim() !== '')
  const texts = [...document.body.querySelectorAll<HTMLElement>('*:not(svg *)')].filter(
    (it) => it.currentCSSZoom === 1 && it.getClientRects().length > 0 && holdsText(it),
  )
  const sizesPx = texts.map((it) => Number.parseFloat(getComputedStyle(it).fontSize))
  return { lostPictures, largestPt: sizesPx.reduce((most, size) => Math.max(most, size), 0) * (72 / 96) }
}
