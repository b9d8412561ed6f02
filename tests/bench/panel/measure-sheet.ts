import type { Browser, CDPSession, Page } from 'playwright-core'

/** What a sheet costs on a slow panel. Times are of the main thread, slowed six times. */
export interface SheetCost {
  /** From a touch on Larger to the next picture, ms, the least of all steps: other work on the computer only adds to it. */
  zoomStepMs: number
  /** Style, layout and paint for each move of the finger, ms. */
  workPerMoveMs: number
  /** Pictures drawn for each move, and the longest time between two beats of the page. */
  picturesPerMove: number
  longestBeatMs: number
}

const slowdown = 6
const moves = 60

/** Opens a drawing on the whole screen of a panel, enlarges it and moves it by finger. */
export async function measureSheet(browser: Browser, address: string): Promise<SheetCost> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, hasTouch: true })
  try {
    const page = await context.newPage()
    const panel = await context.newCDPSession(page)
    await page.goto(address)
    await page.locator('[data-full]').tap()
    await panel.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
    await page.waitForTimeout(1_500)
    const steps: number[] = []
    for (let step = 0; step < 4; step++) {
      steps.push(await zoomStep(page))
      await page.waitForTimeout(1_500)
    }
    await browser.startTracing(page, { categories: ['cc', 'benchmark', 'devtools.timeline', 'disabled-by-default-devtools.timeline.frame'] })
    const longestBeatMs = await beatsWhile(page, () => swipe(page, panel))
    const trace: { traceEvents: TraceEvent[] } = JSON.parse((await browser.stopTracing()).toString())
    const work = trace.traceEvents.filter(
      ({ name, ph }) => ph === 'X' && ['UpdateLayoutTree', 'Layout', 'PrePaint', 'Paint', 'Layerize'].includes(name),
    )
    return {
      zoomStepMs: Math.min(...steps),
      workPerMoveMs: work.reduce((sum, { tdur = 0 }) => sum + tdur, 0) / 1_000 / moves,
      picturesPerMove: trace.traceEvents.filter(({ name }) => name === 'DrawFrame').length / moves,
      longestBeatMs,
    }
  } finally {
    await context.close()
  }
}

interface TraceEvent {
  name: string
  ph: string
  /** Processor time in µs. */
  tdur?: number
}

function zoomStep(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((done) => {
        const start = performance.now()
        document.querySelector<HTMLElement>('[data-zoom="in"]')?.click()
        requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - start)))
      }),
  )
}

/** The longest time between two animation frames of the page while something is done. */
async function beatsWhile(page: Page, act: () => Promise<void>): Promise<number> {
  await page.evaluate(() => {
    const beats: number[] = []
    Reflect.set(window, 'beats', beats)
    const beat = (time: number) => {
      beats.push(time)
      if (Reflect.get(window, 'beats') === beats) requestAnimationFrame(beat)
    }
    requestAnimationFrame(beat)
  })
  await act()
  return page.evaluate(() => {
    const beats: number[] = Reflect.get(window, 'beats')
    Reflect.set(window, 'beats', undefined)
    return Math.max(0, ...beats.slice(1).map((time, index) => time - (beats[index] ?? time)))
  })
}

async function swipe(page: Page, panel: CDPSession): Promise<void> {
  const touch = (type: 'touchStart' | 'touchMove', x: number, y: number) => panel.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] })
  await touch('touchStart', 800, 600)
  for (let move = 1; move <= moves; move++) {
    await touch('touchMove', 800 - move * 8, 600 - move * 5)
    await page.waitForTimeout(16)
  }
  await panel.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
}
