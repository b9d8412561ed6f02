import { type Browser, chromium, type LaunchOptions } from 'playwright-core'
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
  /** Added to the flags that every start has. */
  args?: readonly string[]
  /** Where to look for a browser, best first. */
  from?: readonly Source[]
}

/** Starts the first Chromium that is found and starts. Throws with what was tried and what to do when none starts. */
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
  throw new Error(`no Chromium starts here.\n${advice(reasons)}`)
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
    '- if the lines above speak of a sandbox: set FETTLE_CHROMIUM_SANDBOX=0; only pages of Fettle are opened, with the network off',
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
