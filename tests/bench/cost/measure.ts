import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { checkFiles, readFiles } from '../example.ts'
import { copiesFor, grownMachine } from './grow-machine.ts'

/** Time and memory of the whole process `fettle check` over machines grown from the example, as a table. */
export function measureCheck(sizes: readonly number[]): string {
  const files = readFiles('example-machine', 'content')
  const rows = sizes.map((pages) => {
    const dir = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
    try {
      const grown = [...grownMachine(files, copiesFor(pages, files))].filter(([path]) => !path.startsWith('content/'))
      for (const [path, content] of grown) {
        mkdirSync(dirname(join(dir, path)), { recursive: true })
        writeFileSync(join(dir, path), content)
      }
      return rowOf(dir)
    } finally {
      rmSync(dir, { recursive: true, force: true })
    }
  })
  return [
    '| pages | devices | parts | drawings | time (best of 3) | peak memory | errors and warnings |',
    '| --: | --: | --: | --: | --: | --: | --: |',
    ...rows,
    '',
    `In this process, without start-up: ${bestMs(() => checkFiles(files)).toFixed(0)} ms for the example.`,
    '',
  ].join('\n')
}

interface Summary {
  errors: number
  warnings: number
  pages: number
  devices: number
  parts: number
  drawings: number
}

function rowOf(dir: string): string {
  const runs = [1, 2, 3].map(() => {
    const start = performance.now()
    const { stdout, stderr } = spawnSync(process.execPath, ['--import', peakReporter, 'src/cli/fettle.ts', 'check', dir, '--format', 'json'], {
      encoding: 'utf8',
      maxBuffer: 2 ** 30,
    })
    const timeMs = performance.now() - start
    const peakKb = Number(/peak (\d+)/.exec(stderr)?.[1])
    return { timeMs, peakKb, summary: (JSON.parse(stdout) as { summary: Summary }).summary }
  })
  const [first] = runs
  if (!first) return ''
  const { pages, devices, parts, drawings, errors, warnings } = first.summary
  const timeS = Math.min(...runs.map(({ timeMs }) => timeMs)) / 1000
  const peakMb = Math.max(...runs.map(({ peakKb }) => peakKb)) / 1024
  return `| ${pages} | ${devices} | ${parts} | ${drawings} | ${timeS.toFixed(2)} s | ${peakMb.toFixed(0)} MB | ${errors + warnings} |`
}

/** Tells the peak resident memory of a process in kilobytes when it ends. */
const peakReporter = `data:text/javascript,${encodeURIComponent(
  "process.on('exit',()=>{process.stderr.write('peak '+process.resourceUsage().maxRSS+'\\n')})",
)}`

function bestMs(run: () => unknown): number {
  return Math.min(
    ...[1, 2, 3, 4, 5].map(() => {
      const start = performance.now()
      run()
      return performance.now() - start
    }),
  )
}
