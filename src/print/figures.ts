import { append, attribute, detach, element, elementsIn, firstElement, type HtmlElement, hasClass, isInside, prepend, textOf } from './html-tree.ts'

export interface Counts {
  figures: number
  tables: number
}

export interface CaptionWords {
  figure(number: number): string
  table(number: number): string
}

/** Pictures that are known by another number, or that say only where something is. */
const unnumbered = ['sheet', 'plan']

/** Numbers figures and tables on from `counts`, and gives each a caption: its own, else the text for it, else the heading above it. */
export function numberFigures(main: HtmlElement, counts: Counts, words: CaptionWords): Counts {
  let { figures, tables } = counts
  let heading = ''
  for (const it of elementsIn(main)) {
    if (/^h[1-6]$/.test(it.tagName)) heading = textOf(it)
    else if (it.tagName === 'figure' && !unnumbered.some((name) => hasClass(it, name))) captionFigure(it, words.figure(++figures))
    else if (it.tagName === 'table' && isNumbered(it)) captionTable(it, words.table(++tables), heading)
  }
  return { figures, tables }
}

function isNumbered(table: HtmlElement): boolean {
  return hasClass(table, 'data') || isInside(table, (it) => hasClass(it, 'prose'))
}

function captionFigure(figure: HtmlElement, label: string): void {
  const picture = firstElement(figure, ({ tagName }) => tagName === 'img')
  const own = firstElement(figure, ({ tagName }) => tagName === 'figcaption')
  const said = picture ? (attribute(picture, 'alt') ?? '') : ''
  if (own) prepend(own, `${label}: `)
  else append(figure, element('figcaption', {}, said === '' ? label : `${label}: ${said}`))
}

function captionTable(table: HtmlElement, label: string, heading: string): void {
  const own = firstElement(table, ({ tagName }) => tagName === 'caption')
  if (own) detach(own)
  const said = own ? textOf(own) : heading.replace(/^[\d.]+ /, '')
  prepend(table, element('caption', {}, said === '' ? label : `${label}: ${said}`))
}
