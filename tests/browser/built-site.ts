import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { launchChromium } from './chromium.ts'

export interface BuiltSite {
  /** There from the first test of the file to its last. */
  readonly browser: Browser
  /** The built folder. */
  readonly dir: string
  /** The address from disk of a page, which may have a query or an anchor. */
  fromDisk(address: string): string
}

/** A machine that is built before the tests of a file, and a browser to look at it. */
export function builtSite(build: () => Promise<{ dir: string; remove(): void }>): BuiltSite {
  let browser: Browser | undefined
  let built: { dir: string; remove(): void } | undefined
  beforeAll(async () => {
    ;[browser, built] = await Promise.all([launchChromium(), build()])
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    built?.remove()
  })
  const there = <T>(it: T | undefined): T => {
    if (!it) throw new Error('the machine is built before the tests, and no earlier')
    return it
  }
  return {
    get browser() {
      return there(browser)
    },
    get dir() {
      return there(built).dir
    },
    fromDisk: (address) => {
      const [path = '', rest = ''] = address.split(/(?=[?#])/)
      return pathToFileURL(join(there(built).dir, path)).href + rest
    },
  }
}
