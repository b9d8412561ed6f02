import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { type ZipOptions, zipSync } from 'fflate'
import { listPlainFiles } from './files.ts'

/** Formats that are compressed in themselves: stored as they are, which is faster and no larger. */
const stored = /\.(png|jpe?g|webp|avif|gif|woff2?|gz|zip|pdf|mp4|pf_\w+|pagefind)$/i

/**
 * Zip has no time zone: it stores the clock on the wall. A date of local parts gives the same bytes everywhere; at noon
 * no zone's summer time can move it.
 */
const mtime = new Date(1980, 0, 1, 12)

/** Limits of a zip without the Zip64 extension, which fflate does not write; room is left for names and the directory. */
const mostFiles = 0xffff
const mostBytes = 0xf0000000

/**
 * Packs a folder so that equal folders give equal bytes: order, times, level and flags are fixed, and the paths lie
 * below `rootName`, or at the root where it is empty. The zip appears at its place whole or not at all. Throws if the folder holds
 * a link or is more than a zip can hold.
 */
export function zipFolder(dir: string, zipPath: string, rootName: string): void {
  const entries: Record<string, [Uint8Array, ZipOptions]> = {}
  let size = 0
  for (const path of listPlainFiles(dir)) {
    const content = readFileSync(join(dir, path))
    size += content.length
    entries[rootName === '' ? path : `${rootName}/${path}`] = [content, { level: stored.test(path) ? 0 : 6, mtime }]
  }
  const count = Object.keys(entries).length
  if (count > mostFiles || size > mostBytes) throw new Error(`${count} files of together ${size} bytes are more than a zip holds`)
  const unfinished = join(dirname(zipPath), `.${basename(zipPath)}.new`)
  try {
    writeFileSync(unfinished, zipSync(entries))
    renameSync(unfinished, zipPath)
  } finally {
    rmSync(unfinished, { force: true })
  }
}
