import { randomUUID } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'

/** What is kept in a file; undefined where it is absent or cut short. The caller says whether it is what it wrote. */
export function readKept(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    return undefined
  }
}

/** Keeps a value in a file, whole or not at all. A folder that cannot be written costs time at the next check and nothing else. */
export function writeKept(file: string, value: unknown): void {
  writeWhole(file, JSON.stringify(value))
}

/** The same for bytes. */
export function writeWhole(file: string, content: string | Uint8Array): void {
  const unfinished = `${file}.${randomUUID()}.tmp`
  try {
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(unfinished, content)
    renameSync(unfinished, file)
  } catch {
    try {
      rmSync(unfinished, { force: true })
    } catch {
      // Nothing was written, or it stays until the folder is deleted.
    }
  }
}
