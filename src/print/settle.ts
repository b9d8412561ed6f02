import type { PageNumbers } from './page-numbers.ts'
import type { ReadBack } from './read-back.ts'

export interface Printed extends Pick<ReadBack, 'pages' | 'total'> {
  pdf: Uint8Array
}

export interface Settling<P extends Printed> {
  html(pages: PageNumbers, total: number): string
  print(html: string): Promise<P>
}

/** More printings than that have never been needed; a text that still moves then goes to and fro. */
export const mostPrintings = 4

/**
 * Prints until the numbers that stand in the text are those of its pages. `moved`: ids that still moved when the printings ran out.
 */
export async function settle<P extends Printed>({
  html,
  print,
}: Settling<P>): Promise<(P & { html: string; printings: number }) | { moved: string[] }> {
  let known: PageNumbers = new Map()
  let total = 0
  let moved: string[] = []
  for (let printings = 1; printings <= mostPrintings; printings++) {
    const text = html(known, total)
    const printed = await print(text)
    moved = [...printed.pages].flatMap(([id, page]) => (known.get(id) === page ? [] : [id]))
    const lost = [...known.keys()].filter((id) => !printed.pages.has(id))
    if (printings > 1 && moved.length + lost.length === 0 && printed.total === total) return { ...printed, html: text, printings }
    known = printed.pages
    total = printed.total
  }
  return { moved }
}
