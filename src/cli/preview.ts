import { createReadStream, mkdtempSync, rmSync } from 'node:fs'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { keepingMemory } from '../load/memory.ts'
import { inItsLanguages } from '../model/in-its-languages.ts'
import { reportText } from '../report/text.ts'
import { keptFilesOf } from './kept-files.ts'
import { type Checked, checkFolder, countFindings, sharesOf } from './load.ts'
import { type Options, UsageError } from './options.ts'
import { sharedDir } from './paths.ts'
import { notBuiltYet, previewScript, previewTail } from './preview-page.ts'
import { previewSite } from './preview-site.ts'
import { startProgress } from './progress.ts'
import { watchFolders } from './watch-folders.ts'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.csv': 'text/csv',
  '.woff2': 'font/woff2',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
}

/** Checks and serves on the loopback address alone, and again after each change. Runs until it is interrupted. */
export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  const port = Number(options.get('port') ?? '4600')
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new UsageError(`--port takes a number from 0 to 65535, not \`${options.get('port')}\``)
  const dir = mkdtempSync(join(tmpdir(), 'fettle-preview-'))
  const progress = startProgress()
  const memory = keepingMemory()
  const listeners = new Set<ServerResponse>()
  const script = await previewScript()
  let tail = ''
  const tellPages = () => {
    for (const listener of listeners) listener.write('data: checked\n\n')
  }
  const site = previewSite(dir, [folder, ...options.given(['shared', 'serial', 'no-cache'])], keptFilesOf(folder, options), progress, tellPages)
  const tell = ({ loaded, findings }: Checked, current: boolean) => {
    tail = previewTail(findings, loaded.texts, current)
    tellPages()
  }

  const renew = async () => {
    const start = performance.now()
    const checked = await checkFolder(folder, options, memory)
    const { loaded, machine, findings, accepted } = checked
    const counts = countFindings(findings)
    if (findings.length > 0 || accepted.length > 0) process.stdout.write(reportText(findings, loaded.texts, counts, sharesOf(machine), accepted))
    if (counts.errors > 0 || !machine) {
      progress.done('the last state without errors is still shown')
      tell(checked, false)
      return
    }
    const refused = await site.show({ machine: inItsLanguages(machine), counts, accepted })
    progress.done(refused ? `not shown: ${refused.refused}` : `shown after ${Math.round(performance.now() - start)} ms`)
    tell(checked, refused === undefined)
  }

  const answer = async (request: IncomingMessage, response: ServerResponse) => {
    const path = pathOf(request.url ?? '/')
    if (path === undefined) {
      response.writeHead(400, { 'content-type': 'text/plain' }).end('not an address\n')
      return
    }
    if (path === '/.built') {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
      response.flushHeaders()
      listeners.add(response)
      response.on('close', () => listeners.delete(response))
      return
    }
    if (path === '/.preview.js') {
      response.writeHead(200, { 'content-type': 'text/javascript', 'cache-control': 'no-store' }).end(script)
      return
    }
    const html = (text: string) => response.writeHead(200, { 'content-type': types['.html'], 'cache-control': 'no-store' }).end(text + tail)
    if (site.isEmpty()) {
      html(notBuiltYet)
      return
    }
    const found = await site.at(`${path.slice(1)}${path.endsWith('/') ? 'index.html' : ''}`)
    if (found && 'later' in found) response.writeHead(503, { 'content-type': 'text/plain', 'retry-after': '5' }).end(`${found.later}\n`)
    else if (!found) response.writeHead(404, { 'content-type': 'text/plain' }).end('not in this manual\n')
    else if ('html' in found) html(found.html)
    else {
      response.writeHead(200, { 'content-type': types[extname(found.file)] ?? 'application/octet-stream', 'cache-control': 'no-store' })
      createReadStream(found.file).pipe(response)
    }
  }
  const server = createServer((request, response) => {
    answer(request, response).catch((error: unknown) => {
      const text = error instanceof Error ? error.message : String(error)
      progress.done(`${request.url}: ${text}`)
      response.writeHead(500, { 'content-type': 'text/plain; charset=utf-8' }).end(`this page could not be made: ${text}\n`)
    })
  })

  await renew()
  const listening = await new Promise<string | undefined>((done) => {
    server.once('error', (error) => done(error.message))
    server.listen(port, '127.0.0.1', () => done(undefined))
  })
  if (listening !== undefined) {
    site.close()
    rmSync(dir, { recursive: true, force: true, maxRetries: 5 })
    throw new UsageError(`port ${port} cannot be used: ${listening}; choose another with --port`)
  }
  const address = server.address()
  progress.done(`http://127.0.0.1:${typeof address === 'object' && address ? address.port : port}/  (end with Ctrl+C)`)

  let last = Promise.resolve()
  const stopWatching = watchFolders([folder, sharedDir(options)], () => {
    last = last.then(renew).catch((error: unknown) => progress.done(String(error)))
  })
  await new Promise<void>((stop) => process.once('SIGINT', stop).once('SIGTERM', stop))
  stopWatching()
  site.close()
  server.closeAllConnections()
  server.close()
  rmSync(dir, { recursive: true, force: true, maxRetries: 5 })
  return 0
}

/** The path of an address; undefined when it is not one, such as a stray `%`. */
function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(url.split('?')[0] ?? '/')
  } catch {
    return undefined
  }
}
