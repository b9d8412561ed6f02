import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type LaunchOptions, type Page, type Request } from 'playwright-core'
import { type Candidate, type Source, sources } from './find-chromium.ts'

const flags = [
  '--disable-gpu',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  // Cuts the network below the pages: no name or address but the own machine's leads anywhere, not even after a redirect.
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
]

export interface ChromiumOptions {
  /** Added to the flags that every test has. */
  args?: readonly string[]
  /** Where to look for a browser, best first. */
  from?: readonly Source[]
}

/**
 * Starts the first Chromium that is here and starts: the one named by FETTLE_CHROMIUM, an installed one, the one in
 * node_modules, or Debian's, which it installs when it may. Throws with what was tried and what to do when none starts.
 */
export async function launchChromium({ args = [], from = sources }: ChromiumOptions = {}): Promise<Browser> {
  const reasons: string[] = []
  for (const { name, only, find } of from) {
    let candidates: Candidate[] = []
    try {
      candidates = await find()
    } catch (error) {
      reasons.push(`${name}: ${firstLines(error)}`)
    }
    for (const candidate of candidates) {
      try {
        return await start(candidate, args)
      } catch (error) {
        reasons.push(`${name}, ${candidate.executablePath}: ${firstLines(error)}`)
      }
    }
    if (only && candidates.length > 0) break
  }
  throw new Error(`no Chromium starts here, and the browser tests need one.\n${advice(reasons)}`)
}

function start({ executablePath, env }: Candidate, args: readonly string[]): Promise<Browser> {
  const options: LaunchOptions = {
    executablePath,
    args: [...flags, ...args],
    chromiumSandbox: mayUseSandbox(),
    env: { ...process.env, ...env },
    timeout: 60_000,
  }
  return chromium.launch(options)
}

/** Chromium refuses to start its sandbox as root. Some containers allow it to nobody, hence the variable. */
function mayUseSandbox(): boolean {
  return process.getuid?.() !== 0 && process.env.FETTLE_CHROMIUM_SANDBOX !== '0'
}

function advice(reasons: readonly string[]): string {
  const tried = reasons.length > 0 ? reasons.map((reason) => `- ${reason}`) : ['- nothing was found to try']
  return [
    'Tried:',
    ...tried,
    'Do one of these:',
    '- install Chromium or Chrome so that `chromium` or `google-chrome` is on the PATH (Debian: `sudo apt-get install chromium`)',
    '- set FETTLE_CHROMIUM to the full path of a Chromium or Chrome that starts on this machine',
    '- if the lines above speak of a sandbox: set FETTLE_CHROMIUM_SANDBOX=0; the tests open only pages of this project, with the network off',
  ].join('\n')
}

/** The message up to the browser's own log, of which the last lines hold the reason. */
function firstLines(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error)
  const lines = text.split('\n').filter((line) => /\S/.test(line))
  const telling = lines.filter(
    (line) => /error while loading|sandbox|ENOENT|EACCES|FATAL|cannot|Unable|E: /i.test(line) && !line.includes('<launching>'),
  )
  return [lines[0] ?? 'no reason given', ...telling.slice(0, 3)].join('\n    ')
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
