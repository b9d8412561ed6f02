import { type DefaultTreeAdapterTypes, parse } from 'parse5'
import { fold, wordsOf } from './words.ts'

type HtmlNode = DefaultTreeAdapterTypes.Node

/** What the index of words needs from a built page. */
export interface IndexedPage {
  /** From `<html lang>`, in lower case. */
  language: string
  /** Folded words of the indexed part, each once. Numbers and names with digits are left to the exact index. */
  words: Set<string>
}

/** Reads a page; undefined when nothing in it has `data-pagefind-body`. */
export function readIndexedPage(html: string): IndexedPage | undefined {
  // Most of a large site is indexed; this spares parsing the rest.
  if (!html.includes('data-pagefind-body')) return undefined
  const page = { language: '', texts: [] as string[], indexed: false }
  collect(parse(html), false, page)
  if (!page.indexed) return undefined
  const words = new Set(page.texts.flatMap((text) => [...wordsOf(text), ...compoundsOf(text)]).filter((word) => /^\p{L}{2,}$/u.test(word)))
  return { language: page.language.toLowerCase(), words }
}

/** `pre-wash` is found as `prewash` too, so that is a word as well. */
function compoundsOf(text: string): string[] {
  return (text.match(/\p{L}+(?:[-\u2010\u2011]\p{L}+)+/gu) ?? []).map(fold)
}

function collect(node: HtmlNode, inside: boolean, page: { language: string; texts: string[]; indexed: boolean }): void {
  if (node.nodeName === '#text' && 'value' in node) {
    if (inside) page.texts.push(node.value)
    return
  }
  let within = inside
  if ('attrs' in node) {
    const attribute = (name: string) => node.attrs.find((it) => it.name === name)?.value
    if (node.nodeName === 'html') page.language = attribute('lang') ?? ''
    if (unread.has(node.nodeName) || attribute('data-pagefind-ignore') !== undefined) return
    if (attribute('data-pagefind-body') !== undefined) {
      within = true
      page.indexed = true
    }
  }
  if ('childNodes' in node) for (const child of node.childNodes) collect(child, within, page)
}

/** Elements whose text no reader sees, or that Pagefind leaves out as well. */
const unread = new Set(['script', 'style', 'noscript', 'template', 'select', 'textarea', 'button', 'svg'])
