import { checkFiles, readFiles } from '../example.ts'
import { generateMachine } from '../generate/generate-machine.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { runCheck } from './run-check.ts'

/** Time and memory of the whole process `fettle check` over machines generated from the example, as a table. */
export async function measureCheck(sizes: readonly number[]): Promise<string> {
  const files = readFiles('example-machine', 'content')
  const rows: string[] = []
  for (const pages of sizes) {
    rows.push(await inTemporaryFolder(generateMachine(files, pages), rowOf))
  }
  return [
    '| pages | devices | parts | drawings | time (best of 3) | peak memory | errors and warnings |',
    '| --: | --: | --: | --: | --: | --: | --: |',
    ...rows,
    '',
    `In this process, without start-up: ${bestMs(() => checkFiles(files)).toFixed(0)} ms for the example.`,
    '',
  ].join('\n')
}

function rowOf(dir: string): string {
  const runs = [1, 2, 3].map(() => runCheck(dir))
  const [first] = runs
  if (!first) return ''
  const { pages, devices, parts, drawings, errors, warnings } = first.summary
  const timeS = Math.min(...runs.map((run) => run.timeS))
  const peakMb = Math.max(...runs.map((run) => run.peakMb))
  return `| ${pages} | ${devices} | ${parts} | ${drawings} | ${timeS.toFixed(2)} s | ${peakMb.toFixed(0)} MB | ${errors + warnings} |`
}

function bestMs(run: () => unknown): number {
  return Math.min(
    ...[1, 2, 3, 4, 5].map(() => {
      const start = performance.now()
      run()
      return performance.now() - start
    }),
  )
}
