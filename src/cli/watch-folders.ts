import { type FSWatcher, readdirSync, statSync, watch } from 'node:fs'
import { dirname, join, resolve } from 'node:path'

/** Editors write a file in several steps, and a copy brings many files. */
const pauseMs = 20

/**
 * Calls `changed` after files below the folders have changed, once for changes that come together. Hidden files and
 * those that editors keep beside a file do not count. A folder that goes away and comes back is watched again.
 * Returns what ends it.
 *
 * Each folder has a watcher of its own: the recursive one of Node loses a file on Linux once an editor has put
 * another in its place.
 */
export function watchFolders(folders: readonly string[], changed: () => void): () => void {
  const roots = folders.map((folder) => resolve(folder))
  const watchers = new Map<string, { watcher: FSWatcher; inode: number }>()
  let pause: NodeJS.Timeout | undefined
  const drop = (folder: string) => {
    watchers.get(folder)?.watcher.close()
    watchers.delete(folder)
  }
  const add = (folder: string, counts: (name: string) => boolean) => {
    const inode = inodeOf(folder)
    if (inode === undefined || watchers.get(folder)?.inode === inode) return
    // It went away and came back: the watcher still has the old one.
    drop(folder)
    const watcher = watch(folder, (_, name) => {
      if (name === null || counts(name)) soon()
    })
    watcher.on('error', soon)
    watchers.set(folder, { watcher, inode })
  }
  /** One watcher for each folder that is there; the parent tells when a root itself comes or goes. */
  const renew = () => {
    const there = new Set(roots.flatMap(foldersBelow))
    const parents = roots.map(dirname).filter((parent) => !there.has(parent))
    for (const folder of watchers.keys()) if (!there.has(folder) && !parents.includes(folder)) drop(folder)
    for (const folder of there) add(folder, (name) => !isBeside(name))
    for (const parent of parents) add(parent, (name) => roots.includes(join(parent, name)))
  }
  const soon = () => {
    clearTimeout(pause)
    pause = setTimeout(() => {
      renew()
      changed()
    }, pauseMs)
  }
  renew()
  return () => {
    clearTimeout(pause)
    for (const folder of [...watchers.keys()]) drop(folder)
  }
}

/** A folder and every folder below it; none when it is not there. */
function foldersBelow(folder: string): string[] {
  try {
    const below = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory() && !isBeside(entry.name))
    return [folder, ...below.flatMap(({ name }) => foldersBelow(join(folder, name)))]
  } catch {
    // It went away since it was listed: its parent tells.
    return []
  }
}

const inodeOf = (folder: string) => statSync(folder, { throwIfNoEntry: false })?.ino

const isBeside = (name: string) => /^\.|~$|^node_modules$|^dist$/.test(name)
