import type { BookFacts, FactNames } from './book-facts.ts'

export type Paper = 'a4' | 'letter'

/** Sheet sizes as CSS names them. */
export const sheetSize: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'letter' }

export interface PageStyle {
  /** CSS name of the pages: letters and digits. */
  name: string
  /** Running head; a page without it has nothing round its text. */
  head?: string
  landscape?: boolean
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
    .map(({ name, head, landscape, narrow, sheet, dense }) => {
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
      const size = `${sheetSize[paper]} ${landscape ? 'landscape' : 'portrait'}`
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
