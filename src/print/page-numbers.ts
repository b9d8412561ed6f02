/** Page on which each id is printed, from 1. Empty before the first printing. */
export type PageNumbers = ReadonlyMap<string, number>

const begin = '\uE000'
const end = '\uE001'

/** Stands in a text for the number of the page on which an id is printed. */
export const pageToken = (id: string) => `${begin}${id}${end}`

const tokens = new RegExp(`${begin}([A-Za-z0-9_-]+)${end}`, 'g')

/** As wide as most numbers, so that the second printing moves little. */
const unknown = '000'

/** Writes the numbers in the place of their tokens. */
export function writePageNumbers(text: string, pages: PageNumbers): string {
  return text.replace(tokens, (_, id: string) => String(pages.get(id) ?? unknown))
}

/** The different pages of some ids, in order. */
export function pagesOf(ids: readonly string[], pages: PageNumbers): { id: string; page: number }[] {
  const first = new Map<number, string>()
  for (const id of ids) {
    const page = pages.get(id)
    if (page !== undefined && !first.has(page)) first.set(page, id)
  }
  return [...first].map(([page, id]) => ({ id, page })).sort((a, b) => a.page - b.page)
}
