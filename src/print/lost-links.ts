import type { PageNumbers } from './page-numbers.ts'

/** A link that stands in the document and not in its PDF. */
export interface LostLink {
  /** Id that it should lead to. */
  to: string
  /** Page on which the article begins that holds it. */
  page: number | undefined
}

/**
 * The links of a document that its PDF does not have. A link over two lines is two in a PDF, so that too many prove nothing.
 * `linked`: how often the PDF links to each id.
 */
export function lostLinks(html: string, linked: ReadonlyMap<string, number>, pages: PageNumbers): LostLink[] {
  const left = new Map(linked)
  const lost: LostLink[] = []
  let holder: string | undefined
  const shown = html.slice(0, html.lastIndexOf('<div hidden>'))
  for (const [, article, to] of shown.matchAll(/<(?:article|section) [^>]*\bid="([^"]+)"|<a [^>]*\bhref="#([^"]+)"/g)) {
    if (article !== undefined) holder = article
    if (to === undefined) continue
    const count = left.get(to) ?? 0
    if (count === 0 || !pages.has(to)) lost.push({ to, page: holder === undefined ? undefined : pages.get(holder) })
    else left.set(to, count - 1)
  }
  return lost
}
