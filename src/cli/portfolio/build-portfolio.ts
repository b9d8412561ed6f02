import { type Options, UsageError } from '../options.ts'
import { openShared } from '../paths.ts'
import { startPageObstacle, writeStartPage } from '../start-page.ts'
import { today } from '../today.ts'
import { jobsFor, plannedBuilds } from './planned-builds.ts'
import { runBuilds } from './run-builds.ts'
import { summaryOf } from './summary.ts'

/** Checks and builds several machine folders into one folder, with a start page over all that stands there. The exit code is the highest of theirs. */
export async function buildPortfolio(options: Options): Promise<number> {
  if (options.has('serial')) throw new UsageError('--serial names a unit of one machine: build that machine alone')
  // What is wrong for all is said once, before the first.
  openShared(options)
  today()
  const parent = options.get('out') ?? 'dist'
  const obstacle = startPageObstacle(parent)
  if (obstacle !== undefined) throw new UsageError(obstacle)
  const planned = plannedBuilds(options.words, parent)
  const jobs = jobsFor(options, planned.length)
  const args = options.given(['shared', 'no-cache', 'no-zip'])
  const start = performance.now()
  const builds = await runBuilds(planned, {
    jobs,
    args,
    finished({ folder, output }) {
      process.stderr.write(`== ${folder}\n`)
      for (const { to, text } of output) process[to].write(text)
    },
  })
  const startPage = await writeStartPage(parent)
  process.stdout.write(summaryOf(builds, (performance.now() - start) / 1000, jobs))
  if ('refused' in startPage) process.stderr.write(`no start page: ${startPage.refused}\n`)
  return Math.max('refused' in startPage ? 2 : 0, ...builds.map(({ outcome }) => outcome.code))
}
