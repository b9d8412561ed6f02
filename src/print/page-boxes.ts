import type { BookFacts, FactNames } from './book-facts.ts'

export type Paper = 'a4' | 'letter'

/** How a book has its drawings: turned on its own paper, or on paper of twice the size, which is folded into it. */
export type DrawingPaper = 'turned' | 'folded'

/** Sheet sizes as CSS names them. */
const sheetSize: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'letter' }
const foldedSize: Readonly<Record<Paper, string>> = { a4: 'A3', letter: 'ledger' }

/** Height of a sheet that lies on its long side, in mm. Sources: ISO 216:2007; ANSI/ASME Y14.1-2020, sizes A and B. */
const turnedHeightMm: Readonly<Record<DrawingPaper, Readonly<Record<Paper, number>>>> = {
  turned: { a4: 210, letter: 215.9 },
  folded: { a4: 297, letter: 279.4 },
}

/** Margins above and below, and the name of the drawing, which may take two lines beside the heading of its chapter. */
const besideDrawingMm = 27 + 14.5

/** Height that a drawing may have on its sheet. One that is higher goes on over the next, and Chromium makes all text of the book smaller. */
export const drawingHeightMm = (paper: Paper, drawings: DrawingPaper) => turnedHeightMm[drawings][paper] - besideDrawingMm

export interface PageStyle {
  /** CSS name of the pages: letters and digits. */
  name: string
  /** Running head; a page without it has nothing round its text. */
  head?: string
  landscape?: boolean
  /** On paper of twice the size. */
  folded?: boolean
  /** Little room round what is made for a few pages. */
  narrow?: boolean
  /** A sheet of its own, whose head says what it is: less still, and letters as large as its text. */
  sheet?: boolean
  /** A sheet that is nearer to the edge, though not nearer than office printers print. */
  dense?: boolean
}

export interface BoxWords {
  /** With `{page}` and `{pages}`. */
  pageOf: string
  names: FactNames
}

/** Small, so that no text is cut; boxes do not inherit from the text of the page. */
const type = (pt: number) => `font:${pt}pt/1.2 'Fettle Text',sans-serif;color:#000;white-space:nowrap`

/** The `@page` rules: size, running head, revision, and the page of all pages. */
export function pageRules(styles: readonly PageStyle[], facts: BookFacts, paper: Paper, words: BoxWords): string {
  const { names } = words
  const machine = `${facts.name} · ${facts.model} · ${names.serial} ${facts.serial}`
  const issue = `${facts.document} · ${names.revision} ${facts.revision} · ${facts.date}`
  return styles
    .map(({ name, head, landscape, folded, narrow, sheet, dense }) => {
      const boxes =
        head === undefined
          ? []
          : [
              ['top-left', cssString(head)],
              ['top-right', cssString(sheet ? `${facts.model} · ${names.serial} ${facts.serial}` : machine)],
              ['bottom-left', cssString(sheet ? `${facts.document} · ${names.revision} ${facts.revision}` : issue)],
              ['bottom-center', cssString(facts.demonstration ?? '')],
              ['bottom-right', pageOf(words.pageOf)],
            ]
      const size = `${(folded ? foldedSize : sheetSize)[paper]} ${landscape ? 'landscape' : 'portrait'}`
      const margin = landscape ? '14mm 12mm 13mm' : dense ? '7.5mm 6.5mm' : sheet ? '8.5mm 7.5mm' : narrow ? '13mm 11mm 12mm' : '18mm 17mm 17mm 20mm'
      return `@page ${name}{size:${size};margin:${margin};${boxes.map(([box, content]) => `@${box}{content:${content};${type(sheet ? 9 : 7)}}`).join('')}}`
    })
    .join('\n')
}

/** `Page {page} of {pages}` as the content of a box. */
function pageOf(text: string): string {
  const counters: Readonly<Record<string, string>> = { '{page}': 'counter(page)', '{pages}': 'counter(pages)' }
  return text
    .split(/(\{pages?\})/)
    .filter((it) => it !== '')
    .map((it) => counters[it] ?? cssString(it))
    .join(' ')
}

/** A text as a string of CSS. */
export function cssString(text: string): string {
  return `"${text.replace(/[\\"<>\n\r]/g, (it) => `\\${it.codePointAt(0)?.toString(16)} `)}"`
}
