import { posix } from 'node:path'
import { append, element, elementsIn, fullName, type HtmlElement, hasClass, rename, setAttribute } from './html-tree.ts'
import { pageToken } from './page-numbers.ts'
import { hrefOf, idIn, type TakenPage } from './taken-page.ts'

/** What a link leads to inside the book, before ids have their keys. */
export interface RowTarget {
  /** The page of the book that holds the row. */
  path: string
  anchor: string
}

export interface LinkedBook {
  pages: ReadonlyMap<string, TakenPage>
  /** Pages of the site that are a row of a table in the book. */
  rows: ReadonlyMap<string, RowTarget>
  /** Pages of the site that have an entry in the index. */
  indexed: ReadonlySet<string>
  /** Whether a cross reference says on which page its target is. */
  saysPages: boolean
}

export interface Mention {
  /** Page of the site about the thing. */
  of: string
  /** Id of the link that names it. */
  id: string
}

/** Makes the links of a page lead inside the book, and turns those that leave it into their text. Returns what the index needs. */
export function rewriteLinks(page: TakenPage, book: LinkedBook): Mention[] {
  const mentions: Mention[] = []
  for (const it of elementsIn(page.main)) {
    if (it.tagName === 'a') {
      const mention = rewriteLink(it, page, book, mentions.length)
      if (mention) mentions.push(mention)
    } else rewriteSources(it, page.path)
  }
  return mentions
}

function rewriteLink(link: HtmlElement, page: TakenPage, book: LinkedBook, count: number): Mention | undefined {
  const href = hrefOf(link)
  const isSvg = link.namespaceURI.endsWith('/svg')
  const found = href === undefined ? undefined : targetIn(page.path, href)
  const id = found && targetId(found.path, found.anchor, book)
  link.attrs = link.attrs.filter((it) => !['href', 'xlink:href', 'hreflang', 'target'].includes(fullName(it)))
  if (!found || id === undefined) {
    rename(link, isSvg ? 'g' : 'span')
    return undefined
  }
  setAttribute(link, 'href', `#${id}`)
  const elsewhere = found.path !== page.path
  if (book.saysPages && elsewhere && !isSvg && !hasClass(link, 'label')) append(link, element('span', { class: 'to-page' }, pageToken(id)))
  if (!book.indexed.has(found.path) || !elsewhere) return undefined
  const own = link.attrs.find(({ name }) => name === 'id')?.value ?? `${page.key}-_m${count}`
  setAttribute(link, 'id', own)
  return { of: found.path, id: own }
}

/** The file that a link leads to, from the root of the site, and the place in it. */
export function targetIn(path: string, href: string): { path: string; anchor: string | undefined } {
  const [file = '', anchor] = href.split('#')
  const name = decodeURIComponent(file.replace(/\?.*$/, ''))
  const target = name === '' ? path : posix.normalize(posix.join(posix.dirname(path), name))
  return { path: target, anchor: anchor === undefined || anchor === '' ? undefined : decodeURIComponent(anchor) }
}

/** The id in the book; a place that is not printed gives way to its page. */
export function targetId(path: string, anchor: string | undefined, book: LinkedBook): string | undefined {
  const page = book.pages.get(path)
  if (page) {
    const id = anchor === undefined ? page.key : idIn(page.key, anchor)
    return page.ids.has(id) ? id : page.key
  }
  const row = book.rows.get(path)
  const holder = row && book.pages.get(row.path)
  return row && holder ? idIn(holder.key, row.anchor) : undefined
}

/** Pictures are loaded from the root of the site, where the book lies. */
function rewriteSources(it: HtmlElement, path: string): void {
  const isUse = it.tagName === 'use'
  for (const attr of it.attrs) {
    const loads = attr.name === 'src' || attr.name === 'poster' || (attr.name === 'href' && !isUse)
    if (loads && !/^(data:|#)/.test(attr.value)) attr.value = posix.normalize(posix.join(posix.dirname(path), attr.value))
  }
}
