import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'

const run = promisify(execFile)

export interface BuiltExample {
  /** The built folder. Its path holds a space, an umlaut and a `#`, as paths on sticks do. */
  dir: string
  remove(): void
}

/** Builds the example machine with the command itself, into a folder of its own. */
export async function buildExample(...options: string[]): Promise<BuiltExample> {
  const parent = mkdtempSync(join(tmpdir(), 'fettle-'))
  const dir = join(parent, 'Stick Nº 1 für Halle #2', 'rcw-400')
  await run(process.execPath, ['src/cli/fettle.ts', 'build', 'example-machine', '--out', dir, ...options], { maxBuffer: 10_000_000 })
  return { dir, remove: () => rmSync(parent, { recursive: true, force: true }) }
}
