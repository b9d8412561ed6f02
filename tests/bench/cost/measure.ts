import { mkdirSync, writeFileSync } from 'node:fs'
import { readFiles } from '../example.ts'
import { generateMachine } from '../generate/generate-machine.ts'
import { aboutRun } from './about-run.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { median } from './median.ts'
import { plotSvg, type Series } from './plot.ts'
import { type Run, tryCheck } from './run-check.ts'

/** Sizes in pages, with how often each is checked: a large machine takes minutes. */
const sizes = [
  { pages: 300, runs: 7 },
  { pages: 1_000, runs: 7 },
  { pages: 3_000, runs: 3 },
  { pages: 10_000, runs: 1 },
] as const

/** Where the last results stand, and the user time against the pages. */
const resultFile = 'tests/bench/results/check.md'
const plotFile = 'tests/bench/results/check.svg'

interface Measured {
  name: string
  runs: readonly (Run | undefined)[]
}

/**
 * User time, time and memory of the whole process `fettle check`, as a table that also goes to `resultFile`: over the example and
 * generated machines of up to so many pages, each checked anew (`--no-cache`) and once more with nothing changed.
 */
export async function measureCheck(seed: number, largest: number): Promise<string> {
  const example = readFiles('example-machine', 'content')
  const own = new Map([...example].filter(([path]) => !path.startsWith('content/')))
  const measured: Measured[] = []
  // After each machine: whoever stops a long run keeps what it has measured.
  const add = (more: readonly Measured[]) => {
    measured.push(...more)
    const about = `${aboutRun()}, seed ${seed}. Medians of whole processes; \`anew\` is \`--no-cache\`.`
    const text = [about, '', ...table(measured), ''].join('\n')
    mkdirSync('tests/bench/results', { recursive: true })
    writeFileSync(resultFile, `# What a check costs\n\n${text}`)
    writeFileSync(plotFile, plotSvg('fettle check', 'user time, s', seriesOf(measured)))
    return text
  }
  let text = add(await inTemporaryFolder(own, (dir) => measure('example', dir, 7)))
  for (const { pages, runs } of sizes.filter((size) => size.pages <= largest))
    text = add(await inTemporaryFolder(generateMachine(example, pages, seed), (dir) => measure(`${pages}`, dir, runs)))
  return text
}

function measure(name: string, dir: string, runs: number): Measured[] {
  const times = (count: number, ...options: string[]) => Array.from({ length: count }, () => tryCheck(dir, ...options))
  const anew = times(runs, '--no-cache')
  // Out of memory: there is no report to keep.
  if (anew.includes(undefined)) return [{ name: `${name}, anew`, runs: anew }]
  tryCheck(dir)
  return [
    { name: `${name}, anew`, runs: anew },
    { name: `${name}, unchanged`, runs: times(7) },
  ]
}

function table(measured: readonly Measured[]): string[] {
  return [
    '| machine | pages | devices | runs | user time | time | peak memory | user time a page | findings |',
    '| --- | --: | --: | --: | --: | --: | --: | --: | --: |',
    ...measured.map(rowOf),
  ]
}

function rowOf({ name, runs }: Measured): string {
  const whole = runs.flatMap((run) => run ?? [])
  const [first] = whole
  if (!first || whole.length < runs.length) return `| ${name} | | | ${runs.length} | out of memory | | | | |`
  const { pages, devices, errors, warnings, notes } = first.summary
  const [userS, timeS, peakMb] = [medianOf(whole, 'userS'), medianOf(whole, 'timeS'), medianOf(whole, 'peakMb')]
  const cells = [`${userS.toFixed(2)} s`, `${timeS.toFixed(2)} s`, `${peakMb.toFixed(0)} MB`, `${((userS * 1000) / pages).toFixed(2)} ms`]
  return `| ${[name, pages, devices, runs.length, ...cells, errors + warnings + notes].join(' | ')} |`
}

/** User time anew and unchanged. What ran out of memory has no point. */
function seriesOf(measured: readonly Measured[]): Series[] {
  return ['anew', 'unchanged'].map((name) => ({
    name,
    points: measured.flatMap(({ name: its, runs }) => {
      const whole = runs.flatMap((run) => run ?? [])
      const [first] = whole
      return first && its.endsWith(`, ${name}`) ? [[first.summary.pages, medianOf(whole, 'userS')] as const] : []
    }),
  }))
}

const medianOf = (runs: readonly Run[], of: 'userS' | 'timeS' | 'peakMb') => median(runs.map((run) => run[of]))
