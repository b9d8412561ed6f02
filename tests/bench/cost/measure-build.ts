import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { editFile } from '../../cli/edit-file.ts'
import { writePlainProject } from '../build/plain-project.ts'
import { readFiles } from '../example.ts'
import { generateMachine } from '../generate/generate-machine.ts'
import { aboutRun } from './about-run.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { median } from './median.ts'
import { plotSvg } from './plot.ts'
import { type Cost, timeProcess } from './time-process.ts'

/** Written pages of the generated machines, with how often each is built. */
const sizes = [
  { pages: 300, runs: 3 },
  { pages: 1_000, runs: 1 },
] as const

const resultFile = 'tests/bench/results/build.md'
const plotFile = 'tests/bench/results/build.svg'

/**
 * The whole process `fettle build` over the example and generated machines of up to so many written pages, in turn with
 * a plain build by Astro of the same pages and Pagefind over them: a table that also goes to `resultFile`.
 */
export async function measureBuild(seed: number, largest: number): Promise<string> {
  const example = readFiles('example-machine', 'content')
  const own = new Map([...example].filter(([path]) => !path.startsWith('content/')))
  const measured: Measured[] = []
  // After each machine: whoever stops a long run keeps what it has measured.
  const add = (more: Measured) => {
    measured.push(more)
    const text = [`${aboutRun()}, seed ${seed}. Medians of whole processes.`, '', ...head, ...measured.map(rowOf), ''].join('\n')
    mkdirSync('tests/bench/results', { recursive: true })
    writeFileSync(resultFile, `# What a build costs\n\n${text}`)
    const series = (['own', 'kept', 'plain'] as const).map((of) => ({
      name: { own: 'fettle build --no-cache', kept: 'fettle build after one word', plain: 'plain build' }[of],
      points: measured.map((it) => [it.pages, median(it[of].map(({ timeS }) => timeS))] as const),
    }))
    writeFileSync(plotFile, plotSvg('fettle build, and a plain build of the same words', 'time, s', series))
    return text
  }
  let text = add(await inTemporaryFolder(own, (dir) => measure('example', dir, 3)))
  for (const { pages, runs } of sizes.filter((size) => size.pages <= largest))
    text = add(await inTemporaryFolder(generateMachine(example, pages, seed), (dir) => measure(`${pages}`, dir, runs)))
  return text
}

/** The word that is changed, to and fro. */
const masses = ['2900 kg', '2950 kg']

interface Measured {
  name: string
  /** Of the built site. */
  pages: number
  /** With nothing kept, as the plain build has nothing. */
  own: readonly Cost[]
  /** After one changed word, with what the builds before have kept. */
  kept: readonly Cost[]
  plain: readonly Cost[]
}

const head = [
  '| machine | built pages | runs | fettle build --no-cache | user time | after one word | user time | plain build | user time | ratio --no-cache | user time | ratio | user time |',
  '| --- | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: |',
]

function measure(name: string, dir: string, runs: number): Measured {
  const site = join(dir, 'built')
  // Below our packages, so that its imports are found.
  const project = resolve('node_modules/.cache/fettle-plain-build')
  const build = (...more: string[]) => timeProcess([process.execPath, 'src/cli/fettle.ts', 'build', dir, '--out', site, '--no-zip', ...more])
  const own: Cost[] = []
  const kept: Cost[] = []
  const plain: Cost[] = []
  let pages = 0
  try {
    for (let run = 0; run < runs; run++) {
      own.push(build('--no-cache'))
      // The first of all builds keeps what it makes.
      if (run === 0) build()
      const [was = '', is = ''] = run % 2 === 0 ? masses : masses.toReversed()
      editFile(join(dir, 'pages/front/technical-data.mdx'), was, is)
      kept.push(build())
      rmSync(project, { recursive: true, force: true })
      pages = writePlainProject(site, project)
      const built = timeProcess([process.execPath, resolve('node_modules/astro/bin/astro.mjs'), 'build'], { cwd: project })
      const searched = timeProcess([resolve('node_modules/.bin/pagefind'), '--site', join(project, 'dist')])
      plain.push({ timeS: built.timeS + searched.timeS, userS: built.userS + searched.userS })
    }
  } finally {
    rmSync(project, { recursive: true, force: true })
  }
  return { name, pages, own, kept, plain }
}

function rowOf({ name, pages, own, kept, plain }: Measured): string {
  const of = (costs: readonly Cost[]) => [median(costs.map(({ timeS }) => timeS)), median(costs.map(({ userS }) => userS))] as const
  const than = of(plain)
  const seconds = [of(own), of(kept), than].flatMap((costs) => costs.map((s) => `${s.toFixed(1)} s`))
  const ratios = [of(own), of(kept)].flatMap(([timeS, userS]) => [(timeS / than[0]).toFixed(2), (userS / than[1]).toFixed(2)])
  return `| ${[name, pages, own.length, ...seconds, ...ratios].join(' | ')} |`
}
