import { hash } from 'node:crypto'
import { readFileSync, utimesSync } from 'node:fs'
import { join } from 'node:path'
import { writeWhole } from '../load/kept-json.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import { once } from '../source/once.ts'
import { hashOfViews } from './kept-views.ts'
import type { Options } from './options.ts'
import { removeOlder } from './remove-older.ts'

/** What a build keeps in `.fettle/made` of a machine folder; undefined where nothing that is kept may be trusted. */
export function keptFilesOf(folder: string, options: Options): KeptFiles | undefined {
  return options.has('no-cache') ? undefined : keptFilesIn(join(folder, '.fettle/made'), hashOfViews())
}

/** The libraries that draw and shrink pictures give other bytes on other processors. */
const computer = [process.version, process.platform, process.arch]

/** What no build has asked for in so long is removed. */
const keptMs = 30 * 24 * 3600 * 1000

/**
 * A file for each value, with its hash before it, so that a damaged one is made again and never shown. The folder may be deleted or
 * impossible to write: then a build takes its time. `tool`: hash of what makes the values.
 */
export function keptFilesIn(dir: string, tool: string): KeptFiles {
  const fileOf = (of: readonly string[]) => join(dir, hash('sha256', JSON.stringify([computer, tool, of])))
  const tidy = once(() => {
    try {
      removeOlder(dir, keptMs)
    } catch {
      // Nothing is there yet, or it may not be removed.
    }
  })
  return {
    get(of) {
      const file = fileOf(of)
      const kept = touched(file)
      const made = kept?.subarray(hashBytes)
      return made && kept?.subarray(0, hashBytes).equals(sha256(made)) ? made : undefined
    },
    set(of, made) {
      tidy()
      writeWhole(fileOf(of), Buffer.concat([sha256(made), made]))
    },
  }
}

const hashBytes = 32
const sha256 = (bytes: Uint8Array) => hash('sha256', bytes, 'buffer')

/** The bytes of a file, which is marked as used now. */
function touched(file: string): Buffer | undefined {
  try {
    const bytes = readFileSync(file)
    utimesSync(file, new Date(), new Date())
    return bytes
  } catch {
    // It is not there, or may not be read or marked: the value is made again.
    return undefined
  }
}
