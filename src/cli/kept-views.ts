import { hash } from 'node:crypto'
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { compilePages, openPages, type RenderPage } from '../site/compile-pages.ts'
import { once } from '../source/once.ts'
import { toolHash } from './kept-key.ts'
import { packageDir } from './paths.ts'
import type { Progress } from './progress.ts'
import { removeOlder } from './remove-older.ts'

/** Below the packages, since what Astro compiles finds them from there. */
const home = join(packageDir, 'node_modules/.cache/fettle/views')

/** Folders of sources that no page runs. */
export const unusedByViews: ReadonlySet<string> = new Set(['bundle', 'changes', 'check', 'cli', 'load', 'print', 'report', 'start'])

/** What makes a page, as one hash. */
export const hashOfViews = once(() => toolHash(unusedByViews))

const dayMs = 24 * 3600 * 1000

export interface Views {
  render: RenderPage
  close(): void
}

/**
 * The views of the site as Astro compiles them. They know no machine, so they are kept, under a hash of the sources that a page runs, of
 * the packages and of Node. `anew`: compiled now, for this process alone.
 */
export async function openViews(anew: boolean, progress: Progress): Promise<Views> {
  if (anew) {
    progress.step('views')
    const dir = join(home, `anew-${process.pid}-${Date.now()}`)
    const close = () => rmSync(dir, { recursive: true, force: true })
    try {
      mkdirSync(dir, { recursive: true })
      await compilePages(dir)
      return { render: await openPages(dir), close }
    } catch (error) {
      close()
      throw error
    }
  }
  const name = hash('sha256', `${process.version} ${hashOfViews()}`).slice(0, 16)
  const dir = join(home, name)
  if (!existsSync(dir)) {
    progress.step('views')
    await compileInto(dir)
    // What other states of Fettle have left, but for what a process may be at.
    removeOlder(home, dayMs, (other) => other.startsWith(name))
  }
  try {
    return { render: await openPages(dir), close: () => undefined }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Error(`the kept views cannot be used: delete ${dir}, or build with --no-cache (${reason})`)
  }
}

/** Compiled beside its place and moved there when it is whole; another process may have been faster with the same. */
async function compileInto(dir: string): Promise<void> {
  const beside = `${dir}.${process.pid}`
  mkdirSync(beside, { recursive: true })
  try {
    await compilePages(beside)
    renameSync(beside, dir)
  } catch (error) {
    if (!existsSync(dir)) throw error
  } finally {
    rmSync(beside, { recursive: true, force: true })
  }
}
