import { createHash } from 'node:crypto'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { compare } from '../source/place.ts'

export interface FoundFile {
  /** Below the folder, with forward slashes. */
  path: string
  /** False for a link, a socket and the like: a bundle holds none. */
  plain: boolean
}

/** Everything below a folder that is not a folder, in code-unit order of the whole path. Follows no link. */
export function listFiles(dir: string): FoundFile[] {
  const found: FoundFile[] = []
  const walk = (below: string) => {
    for (const entry of readdirSync(join(dir, below), { withFileTypes: true })) {
      const path = below === '' ? entry.name : `${below}/${entry.name}`
      if (entry.isDirectory()) walk(path)
      else found.push({ path, plain: entry.isFile() })
    }
  }
  walk('')
  return found.sort((a, b) => compare(a.path, b.path))
}

/** The paths of a folder that holds nothing but plain files. Throws at a link: what it leads to is not in the bundle. */
export function listPlainFiles(dir: string): string[] {
  return listFiles(dir).map(({ path, plain }) => {
    if (!plain) throw new Error(`${join(dir, path)} is not a plain file and cannot go into a bundle`)
    return path
  })
}

/** SHA-256 in lower-case hexadecimal digits. */
export function sha256(content: Uint8Array | string): string {
  return createHash('sha256').update(content).digest('hex')
}
