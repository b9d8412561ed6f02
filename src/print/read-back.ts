import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { PageNumbers } from './page-numbers.ts'

/** What a PDF says of itself and of its links. */
export interface ReadBack {
  total: number
  /** Page of each named place. */
  pages: PageNumbers
  title: string
  language: string
  isTagged: boolean
  /** Headings in the outline. */
  outline: number
  /** How often a link leads to each named place. */
  linked: ReadonlyMap<string, number>
}

/** Reads the named places of a PDF, and whether it has what a reader with a screen reader needs. Throws what pdfjs throws. */
export async function readBack(bytes: Uint8Array): Promise<ReadBack> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 })
  const pdf = await task.promise
  try {
    const { info } = await pdf.getMetadata()
    const { Title: title = '', Language: language = '' } = info as { Title?: string; Language?: string }
    // A Map, whatever its type says.
    const marked: unknown = await pdf.getMarkInfo()
    const outline = (await pdf.getOutline()) ?? []
    return {
      total: pdf.numPages,
      pages: await placesIn(pdf),
      title,
      language,
      isTagged: marked instanceof Map && marked.get('Marked') === true,
      outline: countOf(outline),
      linked: await linksIn(pdf),
    }
  } finally {
    await task.destroy()
  }
}

interface OutlineItem {
  items: OutlineItem[]
}

const countOf = (items: readonly OutlineItem[]): number => items.reduce((sum, { items: below }) => sum + 1 + countOf(below), 0)

async function placesIn(pdf: PDFDocumentProxy): Promise<Map<string, number>> {
  const found: unknown = await pdf.getDestinations()
  const entries = found instanceof Map ? [...found] : Object.entries(found as object)
  const pageOfRef = new Map<string, number>()
  const pages = new Map<string, number>()
  for (const [name, place] of entries as [string, unknown][]) {
    const [ref] = Array.isArray(place) ? place : []
    if (!isRef(ref)) continue
    const key = `${ref.num} ${ref.gen}`
    const page = pageOfRef.get(key) ?? (await pdf.getPageIndex(ref)) + 1
    pageOfRef.set(key, page)
    pages.set(name, page)
  }
  return pages
}

async function linksIn(pdf: PDFDocumentProxy): Promise<Map<string, number>> {
  const linked = new Map<string, number>()
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number)
    for (const { dest } of (await page.getAnnotations()) as { dest?: unknown }[])
      if (typeof dest === 'string') linked.set(dest, (linked.get(dest) ?? 0) + 1)
    page.cleanup()
  }
  return linked
}

function isRef(value: unknown): value is { num: number; gen: number } {
  return typeof value === 'object' && value !== null && 'num' in value && 'gen' in value
}
