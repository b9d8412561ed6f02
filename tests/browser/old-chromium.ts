import { spawn } from 'node:child_process'
import { createReadStream, createWriteStream, existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { setTimeout as wait } from 'node:timers/promises'
import { createBrotliDecompress } from 'node:zlib'
import { type DevTools, devToolsOn } from './dev-tools.ts'
import { cacheFolder, sources } from './find-chromium.ts'

/** Chromium 80.0.3987 for Linux on x64, the oldest that the site is made for. */
export interface OldChromium {
  page: DevTools
  close(): Promise<void>
}

/** The package is a compressed binary of 138 MB, unpacked once; nothing of its scripts is run. */
async function unpacked(): Promise<string> {
  const require = createRequire(import.meta.url)
  const file = join(cacheFolder(), 'chromium-80.0.3987')
  if (existsSync(file)) return file
  const staging = mkdtempSync(`${file}-`)
  const packed = join(dirname(require.resolve('chrome-aws-lambda/package.json')), 'bin/chromium.br')
  await pipeline(createReadStream(packed), createBrotliDecompress(), createWriteStream(join(staging, 'chromium'), { mode: 0o755 }))
  renameSync(join(staging, 'chromium'), file)
  rmSync(staging, { recursive: true })
  return file
}

/** Starts it with one page of this size, touched like a panel. Where the system lacks libraries, those of the newer package serve. */
export async function startOldChromium(width: number, height: number): Promise<OldChromium> {
  const program = await unpacked()
  const reasons: string[] = []
  for (const libraries of [async () => [{ env: {} }], ...sources.filter(({ name }) => name.startsWith('npm')).map(({ find }) => find)]) {
    for (const { env } of await libraries()) {
      try {
        return await start(program, env, width, height)
      } catch (error) {
        reasons.push(error instanceof Error ? error.message : String(error))
      }
    }
  }
  throw new Error(`Chromium 80 does not start here:\n${reasons.join('\n')}`)
}

async function start(program: string, env: Readonly<Record<string, string>>, width: number, height: number): Promise<OldChromium> {
  const profile = mkdtempSync(join(tmpdir(), 'fettle-80-'))
  const flags = ['--headless', '--no-sandbox', '--no-zygote', '--disable-gpu', '--disable-dev-shm-usage', '--hide-scrollbars']
  const browser = spawn(
    program,
    [...flags, `--window-size=${width},${height}`, `--user-data-dir=${profile}`, '--remote-debugging-port=0', 'about:blank'],
    { env: { ...process.env, ...env }, stdio: ['ignore', 'ignore', 'pipe'] },
  )
  const ended = new Promise<void>((done) => browser.once('exit', () => done()))
  const close = async () => {
    browser.kill()
    await Promise.race([ended, wait(5000)])
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 })
  }
  try {
    let said = ''
    const port = await new Promise<string>((found, failed) => {
      browser.once('error', failed)
      browser.once('exit', () => failed(new Error(said.trim().split('\n').at(-1) ?? 'it ended')))
      browser.stderr.on('data', (bytes: Buffer) => {
        said += bytes
        const port = /DevTools listening on ws:\/\/127\.0\.0\.1:(\d+)/.exec(said)?.[1]
        if (port) found(port)
      })
    })
    return { page: await devToolsOn(port, width, height), close }
  } catch (error) {
    await close()
    throw error
  }
}
