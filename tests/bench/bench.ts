/** Prints what the check finds, survives and costs: `npm run bench`, or one part of it: `npm run bench -- mutations`. */

import { measureCheck } from './cost/measure.ts'
import { measureBuild } from './cost/measure-build.ts'
import { measurePdf } from './cost/measure-pdf.ts'
import { measurePortfolio } from './cost/measure-portfolio.ts'
import { measurePreview } from './cost/measure-preview.ts'
import { measureRelease } from './cost/measure-release.ts'
import { measureWatch } from './cost/measure-watch.ts'
import { checkFiles, readFiles } from './example.ts'
import { reportFuzz, runFuzz } from './fuzz/run-fuzz.ts'
import { judgeOver, makeMistakes } from './mutations/judge.ts'
import { reportMutations } from './mutations/report.ts'

const [name, seed, inputs = '20000'] = process.argv.slice(2)

const parts: Record<string, (seed: number, count: number) => string | Promise<string>> = {
  mutations(seed) {
    const files = readFiles('example-machine', 'content')
    return reportMutations(makeMistakes(files, seed).map(judgeOver(files)), checkFiles(files).findings.length)
  },
  // It alone needs other tools of its kind to compare with.
  reading: async () => (await import('./reading/measure-reading.ts')).measureReading(),
  pdf: () => measurePdf(200),
  watch: () => measureWatch(4),
  check: (seed, largest) => measureCheck(seed, largest),
  build: (seed, largest) => measureBuild(seed, largest),
  release: (seed, largest) => measureRelease(seed, largest),
  preview: (_seed, saves) => measurePreview(Math.min(saves, 1_000)),
  // It alone needs a browser.
  search: async (_seed, largest) => (await import('./search/measure-search.ts')).measureSearch(largest),
  // Its number is how many machines: 20, which take over half an hour.
  portfolio: (machines) => measurePortfolio(seed === undefined ? 20 : machines),
  // It alone needs a browser.
  views: async () => (await import('./views/measure-views.ts')).measureViews(500),
  // It alone needs a browser.
  panel: async () => (await import('./panel/measure-panel.ts')).measurePanel(),
  fuzz: async (seed, count) => reportFuzz(await runFuzz(count, seed)),
}

const chosen = Object.entries(parts).filter(([part]) => name === undefined || part === name)
if (chosen.length === 0) throw new Error(`there is no part ${name}: ${Object.keys(parts).join(', ')}`)
for (const [part, run] of chosen) {
  const start = performance.now()
  process.stdout.write(`\n# ${part}\n\n${await run(Number(seed ?? '1'), Number(inputs))}`)
  process.stdout.write(`\nTook ${((performance.now() - start) / 1000).toFixed(1)} s.\n`)
}
