import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type BuiltExample, buildExample } from './build-example.ts'
import { launchChromium } from './chromium.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { layoutShift } from './layout-shift.ts'

let browser: Browser
let built: BuiltExample
beforeAll(async () => {
  ;[browser, built] = await Promise.all([launchChromium(), buildExample('--no-zip')])
}, 180_000)
afterAll(async () => {
  await browser?.close()
  built?.remove()
})

// The form of the trainer takes the place of the lists that are there without scripts.
const kinds = Object.entries(kindsOfPages).filter(([kind]) => kind !== 'planning')

test('nothing moves while a page comes up on a slow panel', async () => {
  const moved: [string, number][] = []
  for (const [kind, path] of kinds) {
    // What comes in pieces on a busy computer is given another try; what a script or a font moves, it moves each time.
    const shifts: number[] = []
    while (shifts.length < 3 && Math.min(1, ...shifts) >= 0.1) shifts.push(await shiftOf(path))
    if (Math.min(...shifts) >= 0.1) moved.push([kind, Math.min(...shifts)])
  }
  expect(moved).toEqual([])
}, 240_000)

async function shiftOf(path: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, hasTouch: true })
  try {
    const page = await context.newPage()
    await (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: 6 })
    const [file = '', rest = ''] = path.split(/(?=[?#])/)
    await page.goto(pathToFileURL(join(built.dir, file)).href + rest)
    await page.evaluate(() => document.fonts.ready.then(() => undefined))
    return await layoutShift(page)
  } finally {
    await context.close()
  }
}
