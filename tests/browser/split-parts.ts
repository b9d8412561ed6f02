import type { Page } from 'playwright-core'
import { printedLetters } from './printed-letters.ts'

/** Steps, messages, and what else is read as one. */
const parts = '.route-step, .safety, .source, .point, .cause'

export interface SplitParts {
  /** How many parts of the page are on paper. */
  printed: number
  /** Class and first words of each that begins on another sheet than it ends. */
  split: string[]
}

/** Prints a page as a browser does, with a mark too small to take room at both ends of each part, and reads back on which sheets they lie. */
export async function splitParts(page: Page, format: 'A4' | 'Letter'): Promise<SplitParts> {
  const names = await page.evaluate(markEnds, parts)
  const sheets = await printedLetters(await page.pdf({ format }))
  const sheetOf = new Map(
    sheets.flatMap((letters, sheet) => letters.flatMap(({ text }) => [...text.matchAll(/@\d+[ab]@/g)].map(([mark]) => [mark, sheet]))),
  )
  const ends = names.map((name, index) => ({ name, from: sheetOf.get(`@${index}a@`), to: sheetOf.get(`@${index}b@`) }))
  return {
    printed: ends.filter(({ from, to }) => from !== undefined || to !== undefined).length,
    split: ends.flatMap(({ name, from, to }) => (from === to ? [] : [name])),
  }
}

/** Runs in the page. */
function markEnds(selector: string): string[] {
  const style = document.createElement('style')
  style.textContent =
    '.has-marks{position:relative} .end-mark{position:absolute!important;display:block!important;left:0;font:1px monospace;white-space:nowrap;color:#000}'
  document.head.append(style)
  return [...document.querySelectorAll(selector)].map((part, index) => {
    const name = `${part.className}: ${(part.textContent ?? '').replace(/\s+/g, ' ').slice(0, 60)}`
    part.classList.add('has-marks')
    for (const [end, letter] of [
      ['top', 'a'],
      ['bottom', 'b'],
    ] as const) {
      const mark = document.createElement('span')
      mark.className = 'end-mark'
      mark.textContent = `@${index}${letter}@`
      // A little inside: at the very end of a sheet a mark would go to the next.
      mark.style[end] = '3px'
      part.append(mark)
    }
    return name
  })
}
