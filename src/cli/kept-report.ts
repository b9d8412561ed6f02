import { hash } from 'node:crypto'
import { join } from 'node:path'
import { readKept, writeKept } from '../load/kept-json.ts'
import { coveredFolders, type Folders, keyOf, toolHash } from './kept-key.ts'
import type { Options } from './options.ts'

/** What a check prints, and its exit code. */
export interface Report {
  text: string
  code: number
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
  const key = keyOf([machine, shared], asked, toolHash(unusedByCheck))
  if (key === undefined) return none
  const file = join(path, '.fettle/check', `${hash('sha256', JSON.stringify(asked)).slice(0, 16)}.json`)
  const { folders, isCovered } = coveredFolders({ machine, shared })
  return {
    folders,
    kept: () => reportIn(readKept(file), key),
    keep(report) {
      if (isCovered()) writeKept(file, { key, ...report })
    },
  }
}

/** Folders of the sources that a check never runs. */
export const unusedByCheck: ReadonlySet<string> = new Set(['bundle', 'print', 'search', 'site', 'start'])

function reportIn(kept: unknown, key: string): Report | undefined {
  if (typeof kept !== 'object' || kept === null || !('key' in kept && 'text' in kept && 'code' in kept)) return undefined
  if (kept.key !== key || typeof kept.text !== 'string' || typeof kept.code !== 'number') return undefined
  return { text: kept.text, code: kept.code }
}
