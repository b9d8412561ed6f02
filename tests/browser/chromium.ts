import type { Browser, BrowserContext, BrowserContextOptions, Page, Request } from 'playwright-core'
import { type ChromiumOptions, launchChromium as launch } from '../../src/cli/launch-chromium.ts'
import { sources } from './find-chromium.ts'

/**
 * Starts the first Chromium that is here and starts: the one named by FETTLE_CHROMIUM, an installed one, the one in
 * node_modules, or Debian's, which it installs when it may. Throws with what was tried and what to do when none starts.
 */
export function launchChromium({ args = [], from = sources }: ChromiumOptions = {}): Promise<Browser> {
  return launch({ args, from })
}

export interface PanelOptions {
  /** Size of the visible page in CSS px. */
  width: number
  height: number
  touch: boolean
  /** Anything else a test needs: scripts off, a colour scheme, a language. */
  context?: BrowserContextOptions
}

/** A page on a panel with no network, and everything that went wrong on it since it was opened. */
export interface OpenedPage {
  page: Page
  context: BrowserContext
  /** Each line in the console, of any level: `warning: text (address)`. */
  consoleLines: string[]
  /** Exceptions that no script caught. */
  pageErrors: string[]
  /** Requests inside the bundle that came to nothing: `reason address`. */
  failedRequests: string[]
  /** Addresses outside the bundle that something asked for. None was let through. */
  blockedRequests: string[]
  /** All four lists in one: empty for a page without fault. */
  faults(): string[]
  close(): Promise<void>
}

/** Opens an empty page in a context of its own. Only `file:` and 127.0.0.1 are let through; the rest is refused and recorded. */
export async function openPage(browser: Browser, { width, height, touch, context: more }: PanelOptions): Promise<OpenedPage> {
  const context = await browser.newContext({ viewport: { width, height }, hasTouch: touch, serviceWorkers: 'block', ...more })
  const consoleLines: string[] = []
  const pageErrors: string[] = []
  const failedRequests: string[] = []
  const blockedRequests: string[] = []

  await context.route(
    (url) => !isInside(url.href),
    (route) => route.abort('internetdisconnected'),
  )
  context.on('request', (request) => {
    if (!isInside(request.url())) blockedRequests.push(request.url())
  })
  context.on('requestfailed', (request) => {
    if (isInside(request.url()) && !leftBehind(request)) failedRequests.push(`${request.failure()?.errorText ?? 'failed'} ${request.url()}`)
  })
  context.on('response', (response) => {
    if (response.status() >= 400) failedRequests.push(`${response.status()} ${response.url()}`)
  })
  context.on('console', (message) => consoleLines.push(`${message.type()}: ${message.text()} (${message.location().url})`))
  context.on('weberror', (error) => pageErrors.push(error.error().message))
  // A socket is no request to Chromium's interception, but the resolver rule of the launch stops it.
  context.on('page', (page) => page.on('websocket', (socket) => blockedRequests.push(socket.url())))

  return {
    page: await context.newPage(),
    context,
    consoleLines,
    pageErrors,
    failedRequests,
    blockedRequests,
    faults: () => [...consoleLines, ...pageErrors, ...failedRequests, ...blockedRequests],
    close: () => context.close(),
  }
}

function isInside(address: string): boolean {
  return /^(file:|data:|blob:|about:|chrome-error:|https?:\/\/127\.0\.0\.1[:/])/.test(address)
}

/** A picture still loading when the reader went on to the next page is no fault. */
function leftBehind(request: Request): boolean {
  return request.failure()?.errorText === 'net::ERR_ABORTED' && !request.isNavigationRequest()
}
