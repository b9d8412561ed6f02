import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, CDPSession, Page } from 'playwright-core'
import { buildExample } from '../../browser/build-example.ts'
import { launchChromium } from '../../browser/chromium.ts'
import { kindsOfPages } from '../../browser/kinds-of-pages.ts'
import { layoutShift } from '../../browser/layout-shift.ts'
import { pageWeight, totalBytes } from '../../browser/page-weight.ts'

const panel = { width: 1024, height: 768 }
/** How much slower than this machine's the processor of a panel is taken to be. */
const slowdown = 6
const paints = 5

/** Weight, first paint, layout jumps and memory of the pages of the example, opened from disk. */
export async function measureViews(views: number): Promise<string> {
  const built = await buildExample('--no-zip')
  const browser = await launchChromium({ args: ['--js-flags=--expose-gc'] })
  try {
    const lines = ['kind | html kB | styles kB | scripts kB | all kB | first paint ms | layout shift', '--- | --- | --- | --- | --- | --- | ---']
    for (const [kind, path] of Object.entries(kindsOfPages)) {
      const weight = pageWeight(built.dir, path.replace(/[?#].*/, ''))
      const { paintMs, shift } = await slowPaint(browser, pathToFileURL(built.dir).href, path)
      const sizes = [weight.htmlBytes, weight.styleBytes, weight.scriptBytes, totalBytes(weight)].map((bytes) => (bytes / 1000).toFixed(1))
      lines.push([kind, ...sizes, paintMs.toFixed(0), shift.toFixed(3)].join(' | '))
    }
    return `${lines.join('\n')}\n\n${await memoryOver(browser, built.dir, views)}`
  } finally {
    await browser.close()
    built.remove()
  }
}

/** The median over some openings of a page in a fresh context, with the processor slowed down. */
async function slowPaint(browser: Browser, site: string, path: string): Promise<{ paintMs: number; shift: number }> {
  const times: number[] = []
  let shift = 0
  for (let turn = 0; turn < paints; turn++) {
    const context = await browser.newContext({ viewport: panel, hasTouch: true })
    const page = await context.newPage()
    const session = await context.newCDPSession(page)
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
    await page.goto(`${site}/${path}`)
    times.push(await paintOf(page))
    shift = Math.max(shift, await layoutShift(page))
    await context.close()
  }
  return { paintMs: times.sort((a, b) => a - b)[Math.floor(paints / 2)] ?? Number.NaN, shift }
}

/** Milliseconds to the first paint with content. */
const paintOf = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise((answer) => {
        const look = () => {
          const paint = performance.getEntriesByName('first-contentful-paint')[0]
          if (paint) answer(paint.startTime)
          else setTimeout(look, 20)
        }
        look()
      }),
  )

/** One tab goes from page to page; the heap is read after each tenth of the way, with what is dead collected. */
async function memoryOver(browser: Browser, dir: string, views: number): Promise<string> {
  const context = await browser.newContext({ viewport: panel, hasTouch: true })
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  const paths = Object.values(kindsOfPages)
  const heaps: string[] = []
  for (let view = 0; view <= views; view++) {
    await page.goto(pathToFileURL(join(dir, 'index.html')).href.replace('index.html', paths[view % paths.length] ?? 'index.html'))
    if (view % Math.ceil(views / 10) === 0) heaps.push(`${view} | ${await liveMemory(page, session)}`)
  }
  await context.close()
  return ['views | heap MB of the start page | nodes | listeners', '--- | --- | --- | ---', ...heaps].join('\n')
}

/** Always read on one page, so that pages of different sizes do not hide a growth. */
async function liveMemory(page: Page, session: CDPSession): Promise<string> {
  await page.goto(page.url().replace(/rcw-400\/.*/, 'rcw-400/index.html'))
  await session.send('HeapProfiler.collectGarbage')
  await session.send('Performance.enable')
  const { metrics } = await session.send('Performance.getMetrics')
  const read = (name: string) => metrics.find((it) => it.name === name)?.value ?? Number.NaN
  return `${(read('JSHeapUsedSize') / 1e6).toFixed(2)} | ${read('Nodes')} | ${read('JSEventListeners')}`
}
