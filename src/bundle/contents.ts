import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { ZipEntry } from '../source/zip-entries.ts'
import { listFiles } from './files.ts'
import { withZip, type ZipReading } from './read-zip.ts'

/** The files of a bundle, wherever they are. */
export interface Contents {
  names: readonly string[]
  /** Undefined for what is no plain, whole file: a link, damaged data, or two entries of one name. */
  read(name: string): Uint8Array | undefined
}

/** Hands the files of a built folder or its zip to `use`; nothing is unpacked to disk. Says why where the path cannot be read. */
export function withContents<T>(path: string, use: (contents: Contents) => T): ZipReading<T> {
  try {
    const found = statSync(path, { throwIfNoEntry: false })
    if (!found) return { problem: 'there is no such file or folder' }
    if (found.isDirectory()) return { result: use(folderContents(path)) }
    if (!found.isFile()) return { problem: 'neither a folder nor a zip file' }
    return withZip(path, (entries) => use(zipContents(entries)))
  } catch (error) {
    return { problem: `cannot be read: ${error instanceof Error ? error.message : String(error)}` }
  }
}

function folderContents(dir: string): Contents {
  const plain = new Map(listFiles(dir).map((file) => [file.path, file.plain]))
  return {
    names: [...plain.keys()],
    read: (name) => (plain.get(name) ? readFileSync(join(dir, name)) : undefined),
  }
}

/** Names are relative to the folder in the zip that holds the manifest, so what lies outside it begins with `../`. */
function zipContents(all: readonly ZipEntry[]): Contents {
  const entries = all.filter(({ name }) => !name.endsWith('/'))
  const root = entries.map(({ name }) => /^([^/]+\/)?manifest\.json$/.exec(name)?.[1]).find((folder) => folder !== undefined) ?? ''
  const byName = new Map<string, ZipEntry[]>()
  for (const entry of entries) {
    const name = entry.name.startsWith(root) ? entry.name.slice(root.length) : `../${entry.name}`
    byName.set(name, [...(byName.get(name) ?? []), entry])
  }
  return {
    names: [...byName.keys()],
    read(name) {
      const [entry, ...more] = byName.get(name) ?? []
      return more.length === 0 ? entry?.read() : undefined
    },
  }
}
