import { existsSync } from 'node:fs'
import { join, relative, resolve, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import { diskFolder, type Folder } from '../load/folder.ts'
import { type Options, UsageError } from './options.ts'

/** The folder of Fettle itself, with its package.json, `content/` and `node_modules`. */
export const packageDir = fileURLToPath(new URL('../../', import.meta.url))

/** A folder on disk, labelled as the user would type its files from where the command was started. */
export function openFolder(path: string): Folder {
  const dir = resolve(path)
  const label = relative(process.cwd(), dir).split(sep).join('/')
  return diskFolder(dir, label === '' ? '' : `${label}/`)
}

export function openShared(options: Options): Folder {
  const dir = sharedDir(options)
  if (!existsSync(dir)) throw new UsageError(`there is no folder \`${dir}\``)
  return openFolder(dir)
}

/** The two folders that a check reads. */
export function openFolders(path: string, options: Options): { machine: Folder; shared: Folder } {
  return { machine: openFolder(path), shared: openShared(options) }
}

/** Where the pages for every machine lie. */
export function sharedDir(options: Options): string {
  return options.get('shared') ?? join(packageDir, 'content')
}
