import { fork } from 'node:child_process'
import { cpSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { launchChromium } from '../../browser/chromium.ts'
import { aboutRun } from '../cost/about-run.ts'
import { inTemporaryFolder } from '../cost/in-temporary-folder.ts'
import { median } from '../cost/median.ts'
import { timeProcess } from '../cost/time-process.ts'

const sizes = [1_000, 3_000, 10_000] as const
const resultFile = 'tests/bench/results/search.md'

/** Words, slips, tags and sentences in the order in which they are asked. */
const queries = [
  ['pump', 'filter', 'PRS204', 'lock out the lift', 'door switch', 'conveyer', 'spare seal', 'alarm 0201', 'pressure', 'drive fault'],
  ['wash tank level', 'motor', 'heater', 'set up', 'inductive', 'capacitor', 'chain', 'clean the nozzle', 'isolator', 'DR201'],
].flat()

/**
 * What the search of 1,000 to so many pages in two languages costs: to make, with the memory of Pagefind's process, and to ask, from disk in a
 * new tab with the processor slowed six times, in a worker and in the page. The table goes to `resultFile` too.
 */
export function measureSearch(largest: number): Promise<string> {
  return inTemporaryFolder(new Map(), async (dir) => {
    const example = join(dir, 'example')
    timeProcess([process.execPath, 'src/cli/fettle.ts', 'build', 'example-machine', '--out', example, '--no-zip'])
    const browser = await launchChromium()
    const rows: string[] = []
    let text = ''
    try {
      for (const size of sizes.filter((it) => it <= largest)) {
        const site = join(dir, `pages-${size}`)
        for (const folder of ['assets', 'sheets', 'images']) cpSync(join(example, folder), join(site, folder), { recursive: true })
        const made = await makeSearch(example, site, size)
        for (const mode of ['worker', 'page'] as const) rows.push(rowOf(made, await ask(browser, site, mode), bytesIn(join(site, 'search'))))
        text = [
          `${aboutRun()}. Asked: ${queries.length} questions, each new, then all once more; processor slowed 6 times, which does not reach a worker.`,
          '',
          '| pages | made in | Pagefind memory | Node memory | files | on disk | runs in | first answer | new: median | new: slowest | again: median | longest task | heap |',
          `| ${Array.from({ length: 13 }, () => '--:').join(' | ')} |`,
          ...rows,
          '',
        ].join('\n')
        mkdirSync('tests/bench/results', { recursive: true })
        writeFileSync(resultFile, `# What the search costs\n\n${text}`)
      }
    } finally {
      await browser.close()
    }
    return text
  })
}

interface Made {
  pages: number
  files: number
  timeS: number
  peakMb: number
  pagefindMb: number
}

function makeSearch(example: string, site: string, pages: number): Promise<Made> {
  const child = fork('tests/bench/search/build-large.ts', [example, site, String(pages)])
  let pagefindMb = 0
  // The peak of a process that is gone cannot be asked.
  const watching = setInterval(() => {
    pagefindMb = Math.max(pagefindMb, peakMbOfChildren(child.pid ?? 0))
  }, 50)
  return new Promise((done, failed) => {
    let made: Made | undefined
    child.on('message', (message) => {
      if (typeof message === 'object') made = { ...(message as Made), pagefindMb: 0 }
    })
    child.once('exit', (code) => {
      clearInterval(watching)
      if (made) done({ ...made, pagefindMb })
      else failed(new Error(`the search was not made: ${code}`))
    })
  })
}

/** The peak resident memory of the largest process that another has started, where the system tells it. */
function peakMbOfChildren(parent: number): number {
  const own = readdirSync('/proc').flatMap((pid) => {
    if (!/^\d+$/.test(pid)) return []
    try {
      const status = readFileSync(`/proc/${pid}/status`, 'utf8')
      return Number(/^PPid:\s+(\d+)/m.exec(status)?.[1]) === parent ? [Number(/^VmHWM:\s+(\d+)/m.exec(status)?.[1] ?? 0) / 1024] : []
    } catch {
      return []
    }
  })
  return Math.max(0, ...own)
}

interface Asked {
  mode: string
  firstMs: number
  newMs: number[]
  againMs: number[]
  longestTaskMs: number
  heapMb: number
}

async function ask(browser: Browser, site: string, mode: 'worker' | 'page'): Promise<Asked> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, hasTouch: true })
  try {
    const page = await context.newPage()
    if (mode === 'page') await page.addInitScript('Object.defineProperty(window, "Worker", { value: undefined })')
    await page.addInitScript(
      'window.longestTaskMs = 0; new PerformanceObserver((list) => { for (const { duration } of list.getEntries()) window.longestTaskMs = Math.max(window.longestTaskMs, duration) }).observe({ entryTypes: ["longtask"] })',
    )
    const session = await context.newCDPSession(page)
    await session.send('Emulation.setCPUThrottlingRate', { rate: 6 })
    await page.goto(pathToFileURL(join(site, 'search.html')).href)
    const timed = (query: string) =>
      page.evaluate(async (query) => {
        const start = performance.now()
        await window.FettleSearch?.search(query)
        return performance.now() - start
      }, query)
    const [first = '', ...rest] = queries
    await page.waitForFunction(() => window.FettleSearch !== undefined)
    const firstMs = await timed(first)
    const newMs: number[] = []
    for (const query of rest) newMs.push(await timed(query))
    const againMs: number[] = []
    for (const query of queries) againMs.push(await timed(query))
    const { metrics } = (await session.send('Performance.enable').then(() => session.send('Performance.getMetrics'))) as {
      metrics: { name: string; value: number }[]
    }
    return {
      mode: (await page.evaluate(() => window.FettleSearch?.mode())) ?? 'none',
      firstMs,
      newMs,
      againMs,
      longestTaskMs: await page.evaluate(() => Number(Reflect.get(window, 'longestTaskMs'))),
      heapMb: (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0) / 2 ** 20,
    }
  } finally {
    await context.close()
  }
}

const bytesIn = (dir: string): number =>
  readdirSync(dir, { recursive: true, withFileTypes: true }).reduce(
    (sum, entry) => sum + (entry.isFile() ? statSync(join(entry.parentPath, entry.name)).size : 0),
    0,
  )

function rowOf(made: Made, { mode, firstMs, newMs, againMs, longestTaskMs, heapMb }: Asked, bytes: number): string {
  const ms = (value: number) => `${value.toFixed(0)} ms`
  const cost = [
    `${made.timeS.toFixed(1)} s`,
    `${made.pagefindMb.toFixed(0)} MB`,
    `${made.peakMb.toFixed(0)} MB`,
    made.files,
    `${(bytes / 1e6).toFixed(1)} MB`,
  ]
  const asked = [ms(firstMs), ms(median(newMs)), ms(Math.max(...newMs)), ms(median(againMs)), ms(longestTaskMs), `${heapMb.toFixed(1)} MB`]
  return `| ${[made.pages, ...cost, mode, ...asked].join(' | ')} |`
}
