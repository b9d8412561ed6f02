import { attribute, classesOf, elementsIn, firstElement, fullName, type HtmlElement, parsePage, setAttribute, textOf } from './html-tree.ts'
import { leaveOutScreenOnly } from './screen-only.ts'
import { letWideHeadsBreak } from './wide-heads.ts'

/** The main part of a page of the site, ready to stand among others in one document. */
export interface TakenPage {
  /** From the root of the site. */
  path: string
  /** Begins every id of the page, and is the id of the page itself: `p12`. */
  key: string
  /** The kind that the site styles it by: `lockout`. */
  kind: string
  /** What the page is called, without the machine. */
  title: string
  main: HtmlElement
  /** The ids in it, as they are now. */
  ids: ReadonlySet<string>
}

/** `lists`: headings of lists that are left out. Throws where the text is no page that the site has written. */
export function takePage(path: string, text: string, key: string, lists: ReadonlySet<string>): TakenPage {
  const document = parsePage(text)
  const main = firstElement(document, ({ tagName }) => tagName === 'main')
  const body = firstElement(document, ({ tagName }) => tagName === 'body')
  const title = firstElement(document, ({ tagName }) => tagName === 'title')
  if (!main || !body || !title) throw new Error(`${path} has no main part`)
  leaveOutScreenOnly(main, lists)
  letWideHeadsBreak(main)
  const ids = prefixIds(main, key)
  const kind = classesOf(body).find((name) => name.startsWith('kind-'))
  return { path, key, kind: kind?.slice('kind-'.length) ?? 'page', title: withoutMachine(textOf(title)), main, ids }
}

/** The title of a page ends with the machine: `Stop · RCW 400 0400-017`. */
function withoutMachine(title: string): string {
  const end = title.lastIndexOf(' · ')
  return end > 0 ? title.slice(0, end) : title
}

/** Attributes that name ids of the same page, one or several. */
const naming = new Set(['for', 'headers', 'aria-labelledby', 'aria-describedby', 'aria-controls', 'aria-owns'])

/** Puts the key before every id and before what names one, links apart. */
function prefixIds(main: HtmlElement, key: string): Set<string> {
  const ids = new Set<string>()
  setAttribute(main, 'id', '')
  for (const element of elementsIn(main)) {
    for (const attr of element.attrs) {
      if (attr.name === 'id' && attr.value !== '') {
        attr.value = idIn(key, attr.value)
        ids.add(attr.value)
      } else if (element.tagName !== 'a' && fullName(attr).endsWith('href') && attr.value.startsWith('#'))
        attr.value = `#${idIn(key, attr.value.slice(1))}`
      else if (naming.has(attr.name))
        attr.value = attr.value
          .split(/\s+/)
          .map((it) => idIn(key, it))
          .join(' ')
      else if (attr.value.includes('url(#')) attr.value = attr.value.replace(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${idIn(key, id)})`)
    }
  }
  main.attrs = main.attrs.filter(({ name }) => name !== 'id')
  return ids
}

/** An id of a page as it is called in the book: of letters, digits, `-` and `_` alone, so that links and PDF write it alike. */
export function idIn(key: string, id: string): string {
  return `${key}-${[...id].map((it) => (/[A-Za-z0-9-]/.test(it) ? it : `_${it.codePointAt(0)?.toString(16)}_`)).join('')}`
}

/** The address that an element leads to or loads. */
export function hrefOf(element: HtmlElement): string | undefined {
  return attribute(element, 'href') ?? attribute(element, 'xlink:href')
}
