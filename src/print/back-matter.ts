import type { BookFacts, FactNames } from './book-facts.ts'
import { escapeHtml } from './html-tree.ts'
import { type PageNumbers, pagesOf, pageToken } from './page-numbers.ts'
import type { PrintWords } from './words/print-words.ts'

export interface EffectivePart {
  title: string
  /** Id of the first page of the part. */
  id: string
}

/** Which pages belong to the book, part by part: each part ends before the next one begins. */
export function effectiveHtml(
  parts: readonly EffectivePart[],
  pages: PageNumbers,
  total: number,
  facts: BookFacts,
  words: PrintWords,
  names: FactNames,
): string {
  const rows = parts.map(({ title, id }, index) => {
    const first = index === 0 ? 1 : pages.get(id)
    const next = parts[index + 1]
    const after = next === undefined ? total + 1 : pages.get(next.id)
    const range = first === undefined || after === undefined ? '000–000' : first >= after - 1 ? String(first) : `${first}–${after - 1}`
    const cells = [title, range, facts.revision, facts.date].map((it) => `<td>${escapeHtml(it)}</td>`)
    return `<tr>${cells.join('')}</tr>`
  })
  const heads = [words.chapter, words.pages, names.revision, names.date].map((it) => `<th scope="col">${escapeHtml(it)}</th>`)
  return `<section class="effective"><h1 id="effective">${escapeHtml(words.effective)}</h1><p>${escapeHtml(words.effectiveHint)}</p><table><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></section>`
}

/** A thing that can be looked up by its name. */
export interface IndexEntry {
  name: string
  said: string
  /** Id of what the book says of the thing itself. */
  id: string
  /** Ids of the places that name it. */
  mentions: readonly string[]
  /** On how many pages they may be, before any is known. */
  guess: number
}

export function indexHtml(
  groups: readonly { title: string; id: string; entries: readonly IndexEntry[] }[],
  pages: PageNumbers,
  words: PrintWords,
): string {
  const shown = groups.filter(({ entries }) => entries.length > 0)
  const lists = shown.map(
    ({ title, id, entries }) =>
      `<h2 id="${id}">${escapeHtml(title)}</h2><ul class="index-list">${entries.map((it) => entryHtml(it, pages)).join('')}</ul>`,
  )
  return `<section class="index"><h1 id="index">${escapeHtml(words.index)}</h1><p>${escapeHtml(words.indexHint)}</p>${lists.join('')}</section>`
}

function entryHtml({ name, said, id, mentions, guess }: IndexEntry, pages: PageNumbers): string {
  const own = pages.get(id)
  const found = pagesOf(mentions, pages).filter(({ page }) => page !== own)
  const others = own === undefined ? Array.from({ length: guess }, () => '000') : found.map((it) => `<a href="#${it.id}">${it.page}</a>`)
  const numbers = [`<a href="#${id}"><b>${pageToken(id)}</b></a>`, ...others]
  return `<li><span class="mono">${escapeHtml(name)}</span> <span class="index-said">${escapeHtml(said)}</span> <span class="index-pages">${numbers.join(', ')}</span></li>`
}

export function declarationHtml(words: PrintWords): string {
  return `<section class="declaration"><h1 id="declaration">${escapeHtml(words.declaration)}</h1><p class="declaration-place">${escapeHtml(words.declarationText)}</p></section>`
}
