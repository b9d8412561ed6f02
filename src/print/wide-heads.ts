import { childElements, classesOf, elementsIn, firstElement, type HtmlElement, setAttribute, textOf } from './html-tree.ts'

/** Width of a bold letter and of what stands round the words of a cell, and of the text of the narrowest page, in points: `book.css`. */
const letterPt = 5
const roundCellPt = 11
const textWidthPt = 490

/**
 * The heads of a table stay whole, so that a narrow column is read. Where the longest words of all heads do not stand side by
 * side on a page, they may break: the table would else be wider than its page, and the letters of the whole book smaller.
 */
export function letWideHeadsBreak(main: HtmlElement): void {
  for (const table of elementsIn(main)) {
    if (table.tagName !== 'table') continue
    const row = firstElement(table, ({ tagName }) => tagName === 'tr')
    const widthPt = row ? childElements(row).reduce((sum, cell) => sum + widestWord(textOf(cell)) * letterPt + roundCellPt, 0) : 0
    if (widthPt > textWidthPt) setAttribute(table, 'class', [...classesOf(table), 'wide-heads'].join(' '))
  }
}

/** Letters of the longest word, which breaks at a blank, a hyphen and a soft hyphen alone. */
const widestWord = (text: string) => Math.max(...text.split(/[\s\u00ad-]+/).map((word) => word.length))
