import { keepingMemory } from '../load/memory.ts'
import { type Checked, checkFolder } from './load.ts'
import type { Options } from './options.ts'
import { sharedDir } from './paths.ts'
import { watchFolders } from './watch-folders.ts'

/** Clears the screen and what was scrolled off it. */
const clear = '\x1b[H\x1b[2J\x1b[3J'

/** How long the first checks may be repeated. A large machine, for which one takes longer, has run every reader often enough in the first. */
const warmUpMs = 4_000

/**
 * Checks, and checks again after each change, until it is interrupted. A terminal shows the newest report alone; elsewhere
 * the reports follow each other, each after a line that tells how long it took. Gives the exit code of the last check.
 */
export async function watchCheck(folder: string, options: Options, report: (checked: Checked) => { text: string; code: number }): Promise<number> {
  const memory = keepingMemory()
  let code = 0
  const check = async () => {
    const start = performance.now()
    const { text, code: now } = report(await checkFolder(folder, options, memory))
    code = now
    const took = `checked in ${Math.round(performance.now() - start)} ms, watching for changes (end with Ctrl+C)\n`
    process.stdout.write(process.stdout.isTTY ? `${clear}${text}\n${took}` : `${text}${took}`)
  }
  let last: Promise<void> = Promise.resolve()
  const inTurn = () => {
    last = last.then(check).catch((error: unknown) => {
      code = 2
      process.stdout.write(`stopped: ${error instanceof Error ? error.message : String(error)}\n`)
    })
  }
  const began = performance.now()
  let saved = false
  const stop = watchFolders([folder, sharedDir(options)], () => {
    saved = true
    inTurn()
  })
  const interrupted = new Promise<void>((end) => process.once('SIGINT', end).once('SIGTERM', end))
  inTurn()
  await last
  // The first answers of a process are slow: these are not shown, so that the first save is answered in time. A memory that
  // is still empty makes every reader run. A save during this is answered after the round that is on.
  let roundMs = (performance.now() - began) / 2
  for (let n = 0, leftMs = warmUpMs; n < 6 && roundMs <= leftMs && !saved; n++) {
    const start = performance.now()
    await checkFolder(folder, options, n % 2 === 0 ? keepingMemory() : memory).catch(() => undefined)
    roundMs = performance.now() - start
    leftMs -= roundMs
  }
  await interrupted
  stop()
  await last
  return code
}
