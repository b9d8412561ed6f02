import { readdirSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** Removes what lies in a folder and has not been touched for so long, but for names that are spared. Throws where the folder cannot be read. */
export function removeOlder(dir: string, ageMs: number, isSpared: (name: string) => boolean = () => false): void {
  for (const name of readdirSync(dir)) {
    const path = join(dir, name)
    // Another process may take it away at the same time.
    const touchedMs = statSync(path, { throwIfNoEntry: false })?.mtimeMs
    if (!isSpared(name) && touchedMs !== undefined && Date.now() - touchedMs > ageMs) rmSync(path, { recursive: true, force: true })
  }
}
