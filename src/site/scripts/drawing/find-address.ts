/** What is searched in a drawing, and the hit that is shown, counted from 0 over all its sheets. */
export interface Finding {
  query: string
  at: number | undefined
}

/** As the anchor of an address: it leads from sheet to sheet, and to another language. */
export function findAnchor({ query, at }: Finding): string {
  return `#find=${encodeURIComponent(query)}${at === undefined ? '' : `&at=${at}`}`
}

/** Undefined for any other anchor. */
export function readFindAnchor(anchor: string): Finding | undefined {
  const [, query, at] = /^#find=([^&]*)(?:&at=(\d{1,6}))?$/.exec(anchor) ?? []
  if (query === undefined) return undefined
  try {
    return { query: decodeURIComponent(query), at: at === undefined ? undefined : Number(at) }
  } catch {
    return undefined
  }
}
