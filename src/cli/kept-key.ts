import { hash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { type Folder, isListed } from '../load/folder.ts'
import { packageDir } from './paths.ts'
import { today } from './today.ts'

/** The folders that a check or a build reads. */
export interface Folders {
  machine: Folder
  shared: Folder
}

/** Folders that note whether something was asked for which no list of theirs has, so that a key over the lists does not cover it. */
export function coveredFolders({ machine, shared }: Folders): { folders: Folders; isCovered(): boolean } {
  let isCovered = true
  const covered = (folder: Folder): Folder => {
    const note = (path: string) => {
      if (!isListed(path)) isCovered = false
      return path
    }
    return { ...folder, size: (path) => folder.size(note(path)), read: (path) => folder.read(note(path)) }
  }
  return { folders: { machine: covered(machine), shared: covered(shared) }, isCovered: () => isCovered }
}

/**
 * Everything that a result depends on, as one hash: every file of some folders, what was asked, the day, Node, and Fettle as
 * `toolHash` gives it. Undefined where a file cannot be read, which the check has to tell.
 */
export function keyOf(folders: readonly Folder[], asked: readonly unknown[], tool: string): string | undefined {
  try {
    return hash('sha256', JSON.stringify([tool, process.version, today(), asked, folders.map(hashedFiles)]))
  } catch {
    return undefined
  }
}

/** Path and hash of every file. Throws where one cannot be read. */
export const hashedFiles = (folder: Folder): [path: string, sha256: string][] => folder.list().map((path) => [path, folder.sha256(path)])

/**
 * The version of Fettle, of its dependencies, and of its own sources but the folders `unused`: sources change in a checkout
 * without a new version.
 */
export function toolHash(unused: ReadonlySet<string>, dir = packageDir): string {
  const src = join(dir, 'src')
  const sources = readdirSync(src)
    .filter((folder) => !unused.has(folder))
    .flatMap((folder) => readdirSync(join(src, folder), { recursive: true, withFileTypes: true }))
    .flatMap((entry) => (entry.isFile() ? [join(entry.parentPath, entry.name)] : []))
    .sort()
  const files = [join(dir, 'package.json'), join(dir, 'package-lock.json'), ...sources]
  return hash('sha256', files.map((file) => `${relative(dir, file)}\n${readFileSync(file, 'utf8')}`).join('\0'))
}
