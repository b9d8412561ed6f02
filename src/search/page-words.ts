import type { DefaultTreeAdapterTypes } from 'parse5'
import { fold, wordsOf } from './words.ts'

export type HtmlNode = DefaultTreeAdapterTypes.Node

/** What the index of words needs from a built page. */
export interface IndexedPage {
  /** From `<html lang>`, in lower case. */
  language: string
  /** Folded words of the indexed part, each once. Numbers and names with digits are left to the exact index. */
  words: readonly string[]
}

/** Reads a page; undefined when nothing in it has `data-pagefind-body`. */
export function readIndexedPage(tree: HtmlNode): IndexedPage | undefined {
  const page = { language: '', texts: [] as string[], indexed: false }
  collect(tree, false, page)
  if (!page.indexed) return undefined
  const words = new Set(page.texts.flatMap((text) => [...wordsOf(text), ...compoundsOf(text)]).filter((word) => /^\p{L}{2,}$/u.test(word)))
  return { language: page.language.toLowerCase(), words: [...words] }
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

/** Elements that are indexed nowhere: no reader sees their text, or it belongs to the page and not to its subject. */
export const unindexed: readonly string[] = ['script', 'style', 'noscript', 'template', 'select', 'textarea', 'button', 'svg']
const unread = new Set(unindexed)

/**
 * Parts words that a browser shows apart and Pagefind would read as one: neighbouring elements without a space
 * between them, such as a tag and its description in a row of a list.
 */
export function partElements(html: string): string {
  return html.replace(/(<\/(?:a|b|code|dd|dt|em|i|label|li|small|span|strong|td|th)>)(?=<(?!su[bp]\b))|(?<=[^\s>])(?=<small\b)/g, '$1 ')
}
