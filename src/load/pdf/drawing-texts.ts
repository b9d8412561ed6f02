import { createHash } from 'node:crypto'
import type { Folder } from '../folder.ts'
import { type PdfReader, type PdfText, startPdfReader } from './pdf-reader.ts'
import type { TextCache } from './text-cache.ts'

/** What the PDFs of a machine folder hold, by path. */
export type DrawingTexts = ReadonlyMap<string, PdfText>

/** Raised when the same PDF would be read otherwise. Names pdfjs, so that a new release of it reads every drawing anew. */
export const extraction = 'pdfjs-6.5.438.1'

/** Largest PDF that is read, in bytes. */
export const largestPdfBytes = 200_000_000

const isPdf = (path: string) => /\.pdf$/i.test(path)

/**
 * Reads every PDF of a machine folder before the machine is loaded, from the cache where its bytes are known.
 * A folder, file or cache that cannot be read is left out: `loadMachine` reports what is missing.
 */
export async function readDrawingTexts(machine: Folder, cache?: TextCache): Promise<DrawingTexts> {
  const texts = new Map<string, PdfText>()
  let reader: PdfReader | undefined
  try {
    for (const path of pdfsOf(machine)) {
      const bytes = readBytes(machine, path)
      if (!bytes) continue
      const key = `${extraction}-${createHash('sha256').update(bytes).digest('hex')}`
      const known = cache?.get(key)
      if (known) {
        texts.set(path, known)
        continue
      }
      reader ??= startPdfReader()
      const text = await reader.read(bytes)
      texts.set(path, text)
      if (isLasting(text)) cache?.set(key, text)
    }
  } finally {
    await reader?.close()
  }
  return texts
}

/** Time and memory of this computer are not of the file: the next check tries again. */
function isLasting(text: PdfText): boolean {
  return 'pages' in text ? text.pages.every((page) => !('unreadable' in page)) : text.refused !== 'too-slow'
}

function pdfsOf(machine: Folder): readonly string[] {
  try {
    return machine.list().filter(isPdf)
  } catch {
    // Reported when the machine is loaded.
    return []
  }
}

function readBytes(machine: Folder, path: string): Uint8Array | undefined {
  if ((machine.size(path) ?? 0) > largestPdfBytes) return undefined
  try {
    return machine.read(path)
  } catch {
    // Reported when the machine is loaded.
    return undefined
  }
}
