import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import type { Files } from '../example.ts'

/** Writes files to a new folder, and removes it when the work is done. */
export async function inTemporaryFolder<T>(files: Files, work: (dir: string) => T | Promise<T>): Promise<T> {
  const dir = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
  try {
    for (const [path, content] of files) {
      mkdirSync(dirname(join(dir, path)), { recursive: true })
      writeFileSync(join(dir, path), content)
    }
    return await work(dir)
  } finally {
    rmSync(dir, { recursive: true, force: true })
  }
}
