import { hash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { type Folder, isListed } from '../load/folder.ts'
import { readKept, writeKept } from '../load/kept-json.ts'
import type { Options } from './options.ts'
import { packageDir } from './paths.ts'
import { today } from './today.ts'

/** What a check prints, and its exit code. */
export interface Report {
  text: string
  code: number
}

interface Folders {
  machine: Folder
  shared: Folder
}

export interface ReportKeeper {
  /** The report of a check of the very same files, by this Fettle and on this day; undefined when there is none. */
  kept(): Report | undefined
  /** Keeps the report of the folders below, unless the check has asked for files that the key does not cover. */
  keep(report: Report): void
  /** The folders to check. */
  folders: Folders
}

/**
 * Keeps the report of a check in `.fettle/check` of the machine folder, one file for each form and place that it is
 * asked from. The folder may be deleted, broken or impossible to write: then a check takes its time.
 */
export function reportKeeper(path: string, options: Options, { machine, shared }: Folders): ReportKeeper {
  const none: ReportKeeper = { kept: () => undefined, keep: () => undefined, folders: { machine, shared } }
  if (options.has('no-cache')) return none
  const asked = [options.get('format'), options.get('serial'), machine.label, shared.label]
  const key = keyOf([machine, shared], asked)
  if (key === undefined) return none
  const file = join(path, '.fettle/check', `${hash('sha256', JSON.stringify(asked)).slice(0, 16)}.json`)
  let isCovered = true
  const covered = (folder: Folder): Folder => {
    const note = (path: string) => {
      if (!isListed(path)) isCovered = false
      return path
    }
    return { ...folder, size: (path) => folder.size(note(path)), read: (path) => folder.read(note(path)) }
  }
  return {
    folders: { machine: covered(machine), shared: covered(shared) },
    kept: () => reportIn(readKept(file), key),
    keep(report) {
      if (isCovered) writeKept(file, { key, ...report })
    },
  }
}

/** Everything that a report depends on, as one hash. Undefined where a file cannot be read, which the check has to tell. */
function keyOf(folders: readonly Folder[], asked: readonly unknown[]): string | undefined {
  try {
    const files = folders.map((folder) => folder.list().map((path) => [path, folder.sha256(path)]))
    return hash('sha256', JSON.stringify([toolHash(), process.version, today(), asked, files]))
  } catch {
    return undefined
  }
}

/** Folders of the sources that a check never runs. */
const unused = new Set(['bundle', 'print', 'search', 'site', 'start'])

/** The version of Fettle, of its dependencies, and of its own sources, which change in a checkout without a new version. */
export function toolHash(dir = packageDir): string {
  const src = join(dir, 'src')
  const sources = readdirSync(src)
    .filter((folder) => !unused.has(folder))
    .flatMap((folder) => readdirSync(join(src, folder), { recursive: true, withFileTypes: true }))
    .flatMap((entry) => (entry.isFile() ? [join(entry.parentPath, entry.name)] : []))
    .sort()
  const files = [join(dir, 'package.json'), join(dir, 'package-lock.json'), ...sources]
  return hash('sha256', files.map((file) => `${relative(dir, file)}\n${readFileSync(file, 'utf8')}`).join('\0'))
}

function reportIn(kept: unknown, key: string): Report | undefined {
  if (typeof kept !== 'object' || kept === null || !('key' in kept && 'text' in kept && 'code' in kept)) return undefined
  if (kept.key !== key || typeof kept.text !== 'string' || typeof kept.code !== 'number') return undefined
  return { text: kept.text, code: kept.code }
}
