import { mkdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { listFiles } from '../../../src/bundle/files.ts'
import { editFile } from '../../cli/edit-file.ts'
import { readFiles } from '../example.ts'
import { aboutRun } from './about-run.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { peaksIn, reportingPeaks } from './peaks.ts'
import { inOneLanguage, lessonOfSome, nameOf, portfolioFiles } from './portfolio-machines.ts'
import { planOf } from './portfolio-plan.ts'
import { timeProcess } from './time-process.ts'

/** Where the last results stand. */
const resultFile = 'tests/bench/results/portfolio.md'
const pages = 300

export interface BuildRun {
  what: string
  /** Machines by what became of them: `5 built, 15 unchanged`. */
  states: string
  timeS: number
  /** Processor time of all processes, in user and system mode. */
  cpuS: number
  /** Largest resident memory of one process of Node. */
  peakMb: number
  jobs: number
}

export interface Sizes {
  sitePages: number
  bundleMb: number
  zipMb: number
}

/** `fettle build` over generated machines that share content: cold, warm, and after changes; with a plan that is computed from it. */
export function measurePortfolio(machines: number): Promise<string> {
  const files = portfolioFiles(readFiles('example-machine', 'content'), machines, pages)
  for (const [path, content] of inOneLanguage(files)) files.set(`one-language/${path}`, content)
  return inTemporaryFolder(files, (dir) => {
    const all = Array.from({ length: machines }, (_, index) => join(dir, 'machines', nameOf(index)))
    const [two, one] = [
      runBuild(dir, 'one machine in two languages', [join(dir, 'machines/m01')], 'two'),
      runBuild(dir, 'the same in one language', [join(dir, 'one-language')], 'one'),
    ]
    const sizes = sizesOf(join(dir, 'two'))
    const runs: BuildRun[] = []
    let text = ''
    // After each: whoever stops a long run keeps what it has measured.
    const build = (what: string) => {
      runs.push(runBuild(dir, what, all, 'out'))
      text = `${[`${aboutRun()}; ${machines} machines, one run.`, '', ...table([two, one, ...runs]), '', ...planOf({ machines, runs, two, one, sizes })].join('\n').trimEnd()}\n`
      mkdirSync('tests/bench/results', { recursive: true })
      writeFileSync(resultFile, `# What many machines cost\n\n${text}`)
    }
    build('cold')
    build('warm: nothing has changed')
    writeFileSync(join(dir, 'content/notes.txt'), 'x\n')
    build('a shared file has changed that none takes')
    editFile(join(dir, `content/${lessonOfSome}.mdx`), 'title: ', 'title: How to ')
    build('a shared lesson has changed that a quarter take')
    editFile(join(dir, `machines/${nameOf(machines - 1)}/pages/front/technical-data.mdx`), '2900 kg', '2950 kg')
    build('a page of one machine has changed')
    return text
  })
}

function runBuild(dir: string, what: string, folders: readonly string[], out: string): BuildRun {
  const words = ['build', ...folders, '--shared', join(dir, 'content'), '--out', join(dir, out)]
  const { stdout, stderr, timeS, userS, systemS } = timeProcess([process.execPath, 'src/cli/fettle.ts', ...words], {
    env: reportingPeaks,
  })
  const alone = folders.length === 1 ? '1 built' : undefined
  const [, states = alone, jobs = '1'] = /^\d+ machines: ([^;]*);.* at most (\d+) at once$/m.exec(stdout) ?? []
  if (states === undefined) throw new Error(`${what}: no summary\n${stdout}\n${stderr}`)
  return { what, states, timeS, cpuS: userS + systemS, peakMb: Math.max(...peaksIn(stderr)), jobs: Number(jobs) }
}

function sizesOf(bundle: string): Sizes {
  const found = listFiles(bundle).map(({ path }) => path)
  const bytes = found.reduce((sum, path) => sum + statSync(join(bundle, path)).size, 0)
  return { sitePages: found.filter((path) => path.endsWith('.html')).length, bundleMb: bytes / 1e6, zipMb: statSync(`${bundle}.zip`).size / 1e6 }
}

function table(runs: readonly BuildRun[]): string[] {
  return [
    '| build | what became of them | time | processor time | peak memory of a process |',
    '| --- | --- | --: | --: | --: |',
    ...runs.map(
      ({ what, states, timeS, cpuS, peakMb }) => `| ${what} | ${states} | ${timeS.toFixed(1)} s | ${cpuS.toFixed(1)} s | ${peakMb.toFixed(0)} MB |`,
    ),
  ]
}
