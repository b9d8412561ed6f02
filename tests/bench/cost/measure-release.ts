import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { editFile } from '../../cli/edit-file.ts'
import { readFiles } from '../example.ts'
import { generateMachine } from '../generate/generate-machine.ts'
import { aboutRun } from './about-run.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { peaksIn, reportingPeaks } from './peaks.ts'
import { timeProcess } from './time-process.ts'

/** Where the last results stand. */
const resultFile = 'tests/bench/results/release.md'

/** Written pages of the generated machines. */
const sizes = [300, 1_000] as const

const head = ['| machine | step | time | user time | peak memory of one process of Node | what it made |', '| --- | --- | --: | --: | --: | --- |']

/** What a release is made by, once each over the example and generated machines of up to so many written pages: a table that also goes to `resultFile`. */
export async function measureRelease(seed: number, largest: number): Promise<string> {
  const example = readFiles('example-machine', 'content')
  const own = new Map([...example].filter(([path]) => !path.startsWith('content/')))
  const rows: string[] = []
  let text = ''
  // After each step: whoever stops a long run keeps what it has measured.
  const add = (row: string) => {
    rows.push(row)
    text = [`${aboutRun()}, seed ${seed}. One run of each whole process.`, '', ...head, ...rows, ''].join('\n')
    mkdirSync('tests/bench/results', { recursive: true })
    writeFileSync(resultFile, `# What a release costs\n\n${text}`)
  }
  await inTemporaryFolder(own, (dir) => measure('example', dir, add))
  for (const pages of sizes.filter((size) => size <= largest))
    await inTemporaryFolder(generateMachine(example, pages, seed), (dir) => measure(`${pages}`, dir, add))
  return text
}

function measure(name: string, dir: string, add: (row: string) => void): void {
  const site = join(dir, 'built/site')
  const step = (what: string, ...args: readonly string[]) => {
    const { timeS, userS, stdout, stderr } = timeProcess([process.execPath, 'src/cli/fettle.ts', ...args], { env: reportingPeaks })
    const said = [...`${stdout}\n${stderr}`.matchAll(/\d+ pages(?=[ ,])|whole, as it was built/g)].at(-1)?.[0] ?? ''
    add(`| ${[name, what, `${timeS.toFixed(1)} s`, `${userS.toFixed(1)} s`, `${Math.max(...peaksIn(stderr)).toFixed(0)} MB`, said].join(' | ')} |`)
  }
  step('build', 'build', dir, '--out', site)
  editFile(join(dir, 'pages/front/technical-data.mdx'), '2900 kg', '2950 kg')
  step('build after one word', 'build', dir, '--out', site)
  step('verify the folder', 'verify', site)
  step('verify the zip', 'verify', `${site}.zip`)
  step('print the book', 'print', dir, '--out', join(dir, 'built/book.pdf'))
}
