import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { Outcome } from './outcome.ts'
import type { PlannedBuild } from './planned-builds.ts'

const child = fileURLToPath(new URL('child.ts', import.meta.url))

export interface FinishedBuild {
  folder: string
  outcome: Outcome
  seconds: number
  /** What it wrote, in its order. */
  output: readonly { to: 'stdout' | 'stderr'; text: string }[]
}

/**
 * Builds machines, at most `jobs` at once, in a process each, so that its memory is given back. `finished` hears of them in the
 * order of the list, each when it and all before it are done.
 */
export async function runBuilds(
  builds: readonly PlannedBuild[],
  { jobs, args, finished }: { jobs: number; args: readonly string[]; finished(build: FinishedBuild): void },
): Promise<FinishedBuild[]> {
  const done: (FinishedBuild | undefined)[] = builds.map(() => undefined)
  let [next, told] = [0, 0]
  const work = async () => {
    for (let index = next++; index < builds.length; index = next++) {
      const build = builds[index]
      if (!build) return
      done[index] = await runBuild(build, args)
      for (let ready = done[told]; ready; ready = done[told]) {
        finished(ready)
        told++
      }
    }
  }
  await Promise.all(Array.from({ length: jobs }, work))
  return done.flatMap((build) => build ?? [])
}

function runBuild({ folder, outDir }: PlannedBuild, args: readonly string[]): Promise<FinishedBuild> {
  const start = performance.now()
  const output: FinishedBuild['output'][number][] = []
  const process = fork(child, [folder, ...(outDir === undefined ? [] : ['--out', outDir]), ...args], { stdio: ['ignore', 'pipe', 'pipe', 'ipc'] })
  for (const to of ['stdout', 'stderr'] as const) process[to]?.setEncoding('utf8').on('data', (text: string) => output.push({ to, text }))
  return new Promise((resolve) => {
    let outcome: Outcome | undefined
    // Our own child speaks our own types.
    process.on('message', (message) => {
      outcome = message as Outcome
    })
    ended(process, (why) => {
      if (!outcome) output.push({ to: 'stderr', text: `not built: ${why}\n` })
      resolve({ folder, outcome: outcome ?? { state: 'not built', code: 2 }, seconds: (performance.now() - start) / 1000, output })
    })
  })
}

/** Tells once how a process ended, when all that it wrote has been read. */
function ended(process: ChildProcess, tell: (why: string) => void): void {
  let isTold = false
  const once = (why: string) => {
    if (!isTold) tell(why)
    isTold = true
  }
  process.on('error', (error) => once(`its process could not be started: ${error.message}`))
  process.on('close', (code, signal) => once(signal === null ? `its process ended with code ${code}` : `its process was ended by ${signal}`))
}
