import { spawnSync } from 'node:child_process'

export interface Run {
  timeS: number
  /** Processor time in user mode, which other work on the computer moves less. */
  userS: number
  peakMb: number
  summary: { errors: number; warnings: number; notes: number; pages: number; devices: number; parts: number; drawings: number }
}

/** The whole process `fettle check` over a folder. Undefined when it ended without a report: it ran out of memory. */
export function tryCheck(dir: string, ...options: readonly string[]): Run | undefined {
  const start = performance.now()
  const args = ['--import', usageReporter, 'src/cli/fettle.ts', 'check', dir, '--format', 'json', ...options]
  const { stdout, stderr, signal } = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 2 ** 30 })
  const timeS = (performance.now() - start) / 1000
  if (signal !== null) return undefined
  // A thread for PDFs prints its own line; the last one is that of the process.
  const [, userUs, peakKb] = [...stderr.matchAll(/^usage (\d+) (\d+)$/gm)].at(-1) ?? []
  const { summary } = JSON.parse(stdout) as { summary: Run['summary'] }
  return { timeS, userS: Number(userUs) / 1e6, peakMb: Number(peakKb) / 1024, summary }
}

/** The same where a report is expected. */
export function runCheck(dir: string, ...options: readonly string[]): Run {
  const run = tryCheck(dir, ...options)
  if (!run) throw new Error(`the check of ${dir} ended without a report`)
  return run
}

/** Tells the user time of a process in microseconds and its peak resident memory in kilobytes when it ends. */
const usageReporter = `data:text/javascript,${encodeURIComponent(
  "process.on('exit',()=>{const{userCPUTime:u,maxRSS:m}=process.resourceUsage();process.stderr.write('\\nusage '+u+' '+m+'\\n')})",
)}`
