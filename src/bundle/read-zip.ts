import { closeSync, fstatSync, openSync, readSync } from 'node:fs'
import { type ZipEntry, zipEntries } from '../source/zip-entries.ts'

/** In bytes. No page or photo comes near it; a few kilobytes that unpack to more were made to fill the memory. */
const largestFile = 2 ** 30

export type ZipReading<T> = { result: T } | { problem: string }

/**
 * Hands the entries of a zip on disk to `use`; nothing is written to disk. Zip64 and encrypted entries are not read,
 * as `zipFolder` writes neither.
 */
export function withZip<T>(path: string, use: (entries: readonly ZipEntry[]) => T): ZipReading<T> {
  const file = openSync(path, 'r')
  try {
    const size = fstatSync(file).size
    const bytes = (start: number, length: number) => {
      const buffer = Buffer.alloc(Math.max(0, Math.min(length, size - start)))
      return buffer.subarray(0, readSync(file, buffer, 0, buffer.length, start))
    }
    const entries = zipEntries(size, bytes, largestFile)
    return entries ? { result: use(entries) } : { problem: 'not a whole zip file: it is cut off, damaged or of another kind' }
  } finally {
    closeSync(file)
  }
}
