import { join } from 'node:path'
import { readKept, writeKept } from '../kept-json.ts'
import type { PdfText } from './pdf-reader.ts'

/** Remembers what stands in a PDF. */
export interface TextCache {
  /** Undefined when it is not known, or what was kept cannot be read. */
  get(key: string): PdfText | undefined
  set(key: string, text: PdfText): void
}

/** Keeps one JSON file a drawing in a folder that may be deleted at any time, and may be impossible to write. */
export function textCache(dir: string): TextCache {
  const fileOf = (key: string) => join(dir, `${key}.json`)
  return {
    get(key) {
      const kept = readKept(fileOf(key))
      return isPdfText(kept) ? kept : undefined
    },
    set: (key, text) => writeKept(fileOf(key), text),
  }
}

function isPdfText(kept: unknown): kept is PdfText {
  if (typeof kept !== 'object' || kept === null) return false
  if ('refused' in kept) return typeof kept.refused === 'string' && 'reason' in kept && typeof kept.reason === 'string'
  return 'pages' in kept && Array.isArray(kept.pages) && kept.pages.every(isPdfPage)
}

function isPdfPage(page: unknown): boolean {
  if (typeof page !== 'object' || page === null || !('texts' in page) || !Array.isArray(page.texts)) return false
  if (!('width' in page && 'height' in page && isNumber(page.width) && isNumber(page.height))) return false
  return page.texts.every(isPlacedText)
}

function isPlacedText(text: unknown): boolean {
  if (typeof text !== 'object' || text === null || !('text' in text) || typeof text.text !== 'string') return false
  const numbers: Record<string, unknown> = { ...text }
  return ['x', 'y', 'fontSize', 'angleDeg'].every((name) => isNumber(numbers[name]))
}

const isNumber = (value: unknown) => typeof value === 'number' && Number.isFinite(value)
