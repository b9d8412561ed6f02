import { spawnSync } from 'node:child_process'

export interface Run {
  timeS: number
  peakMb: number
  summary: { errors: number; warnings: number; pages: number; devices: number; parts: number; drawings: number }
}

/** The whole process `fettle check` over a folder. */
export function runCheck(dir: string): Run {
  const start = performance.now()
  const { stdout, stderr } = spawnSync(process.execPath, ['--import', peakReporter, 'src/cli/fettle.ts', 'check', dir, '--format', 'json'], {
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
  })
  const timeS = (performance.now() - start) / 1000
  // A thread for PDFs prints its own line; the last one is that of the process.
  const peakKb = Number([...stderr.matchAll(/^peak (\d+)$/gm)].at(-1)?.[1])
  return { timeS, peakMb: peakKb / 1024, summary: (JSON.parse(stdout) as { summary: Run['summary'] }).summary }
}

/** Tells the peak resident memory of a process in kilobytes when it ends. */
const peakReporter = `data:text/javascript,${encodeURIComponent(
  "process.on('exit',()=>{process.stderr.write('\\npeak '+process.resourceUsage().maxRSS+'\\n')})",
)}`
