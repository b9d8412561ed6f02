import { hash } from 'node:crypto'
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { remembered } from '../source/once.ts'
import { compare } from '../source/place.ts'

/** A tree of files to load from: a folder on disk, or files in memory in a test. */
export interface Folder {
  /** What findings put before a path: `example-machine/`, or empty. */
  label: string
  /** Every file below it, with forward slashes, in code-unit order. Throws if the folder cannot be read. */
  list(): readonly string[]
  /** Size in bytes; undefined when there is no such file. */
  size(path: string): number | undefined
  /** The bytes of a file. Throws if it cannot be read. */
  read(path: string): Uint8Array
  /** The SHA-256 of the bytes of a file, in hexadecimal; taken once. Throws if it cannot be read. */
  sha256(path: string): string
  /** Where the file lies on disk; undefined for files in memory. */
  onDisk(path: string): string | undefined
}

/** Folders that are never content: built sites, work folders, generated schemas. */
const skipped = new Set(['node_modules', 'dist', 'schema'])

/** Tells whether a file at a path would be in the list of its folder, if it is there. */
export function isListed(path: string): boolean {
  const [first = '', ...rest] = path.split('/')
  if ([first, ...rest].some((name) => name === '' || name.startsWith('.'))) return false
  return rest.length === 0 || !skipped.has(first)
}

export function diskFolder(dir: string, label: string): Folder {
  const read = (path: string) => {
    // A pipe or a device would never end.
    if (!statSync(join(dir, path)).isFile()) throw new Error('it is no plain file')
    return readFileSync(join(dir, path))
  }
  return {
    label,
    list() {
      const found: string[] = []
      const walk = (below: string) => {
        for (const entry of readdirSync(join(dir, below), { withFileTypes: true })) {
          if (entry.name.startsWith('.')) continue
          const path = below === '' ? entry.name : `${below}/${entry.name}`
          if (entry.isDirectory()) {
            if (below !== '' || !skipped.has(entry.name)) walk(path)
          } else found.push(path)
        }
      }
      walk('')
      return found.sort(compare)
    },
    size: (path) => statSync(join(dir, path), { throwIfNoEntry: false })?.size,
    read,
    sha256: remembered((path) => hash('sha256', read(path))),
    onDisk: (path) => join(dir, path),
  }
}

export function memoryFolder(files: ReadonlyMap<string, string | Uint8Array>, label = ''): Folder {
  const bytes = (path: string) => {
    const content = files.get(path)
    return typeof content === 'string' ? new TextEncoder().encode(content) : content
  }
  const read = (path: string) => {
    const content = bytes(path)
    if (!content) throw new Error(`no file ${path}`)
    return content
  }
  return {
    label,
    list: () => [...files.keys()].sort(compare),
    size: (path) => bytes(path)?.length,
    read,
    sha256: (path) => hash('sha256', read(path)),
    onDisk: () => undefined,
  }
}
