import type { BookFacts, FactNames } from './book-facts.ts'
import { documentHtml } from './document.ts'
import { joinNameAndHeading } from './headings.ts'
import {
  childElements,
  detach,
  element,
  elementsIn,
  escapeHtml,
  firstElement,
  type HtmlElement,
  hasClass,
  moveChildren,
  parsePart,
  prepend,
  textOf,
  writeElement,
} from './html-tree.ts'
import { rewriteLinks } from './links.ts'
import { tightenLockout } from './lockout-sheet.ts'
import { type Paper, pageRules } from './page-boxes.ts'
import { qrSvg } from './qr-svg.ts'
import { takePage } from './taken-page.ts'
import type { PrintWords } from './words/print-words.ts'

/** Room between the lines of a sheet and round them. */
export type Room = 'usual' | 'little' | 'least'

const roomClasses: Readonly<Record<Room, string>> = { usual: '', little: ' dense', least: ' dense densest' }

export interface SheetInput {
  path: string
  html: string
  /** What finds the page in the search of the manual; undefined where there is no short name of it. */
  lookUp: string | undefined
  facts: BookFacts
  names: FactNames
  words: PrintWords
  paper: Paper
  styles: string
  lists: ReadonlySet<string>
  room: Room
}

/** One page of the site as a document of its own: a sheet for a door, a folder, a hand. Its links are text. */
export function sheetHtml(input: SheetInput): string {
  const { facts, names, words, lookUp } = input
  const page = takePage(input.path, input.html, 'p1', input.lists)
  rewriteLinks(page, { pages: new Map([[page.path, page]]), rows: new Map(), indexed: new Set(), saysPages: false })
  joinNameAndHeading(page.main)
  leaveOutWorking(page.main)
  if (page.kind === 'lockout') tightenLockout(page.main, words)
  const heading = takeHeading(page.main)
  const article = element('article', { class: `sheet-page kind-${page.kind}`, id: page.key })
  moveChildren(page.main, article)
  const styles = pageRules([{ name: 'sheet', head: page.title, sheet: true, dense: input.room !== 'usual' }], facts, input.paper, {
    pageOf: words.pageOf,
    names,
  })
  const said = [
    [facts.name, facts.model],
    [names.serial, facts.serial],
    [names.document, facts.document],
    [names.revision, `${facts.revision}, ${facts.date}`],
    [names.checkValue, facts.checkValue],
  ].map(([name = '', text = '']) => `<span><small>${escapeHtml(name)}</small> <b class="mono">${escapeHtml(text)}</b></span>`)
  const find = lookUp === undefined ? '' : `<span>${escapeHtml(words.scan)}: <b class="mono">${escapeHtml(lookUp)}</b></span>`
  const head = `<header class="sheet-head"><div>${heading}<p>${[...said, find].join(' ')}</p></div>${lookUp === undefined ? '' : qrSvg(lookUp)}</header>`
  // In two columns the head belongs to the first: Chromium would else leave the page below it empty rather than break a column.
  const isInColumns = page.kind === 'lockout'
  if (isInColumns) for (const it of childElements(parsePart(head)).reverse()) prepend(article, it)
  return documentHtml({
    language: facts.language,
    title: `${page.title}, ${facts.name} ${facts.model} ${facts.serial}, ${names.revision} ${facts.revision}`,
    styles: `${input.styles}\n${styles}`,
    body: `<div class="sheet-of${roomClasses[input.room]}">${isInColumns ? '' : head}${writeElement(article)}</div>`,
    ids: [page.key],
  })
}

/** The heading with what stands beside it goes to the head of the sheet. */
function takeHeading(main: HtmlElement): string {
  const heading = firstElement(main, ({ tagName }) => tagName === 'h1')
  if (!heading) return ''
  detach(heading)
  return writeElement(heading)
}

/** How a value was computed stands in the book; a sheet on a door has the value. */
function leaveOutWorking(main: HtmlElement): void {
  for (const it of elementsIn(main)) if (hasClass(it, 'working')) detach(it)
  for (const it of elementsIn(main)) {
    const value = hasClass(it, 'stored') ? firstElement(it, ({ tagName }) => tagName === 'dd') : undefined
    if (value && textOf(value) === '') detach(it)
  }
}
