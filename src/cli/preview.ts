import { createReadStream, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { createServer, type ServerResponse } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join, resolve, sep } from 'node:path'
import { reportText } from '../report/text.ts'
import { buildSite } from './build-site.ts'
import { type Checked, checkFolder, countFindings, sharesOf } from './load.ts'
import { type Options, UsageError } from './options.ts'
import { sharedDir } from './paths.ts'
import { notBuiltYet, previewScript, previewTail } from './preview-page.ts'
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

/** Builds, serves on the loopback address alone, and builds again after a change. Runs until it is interrupted. */
export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  const port = Number(options.get('port') ?? '4600')
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new UsageError(`--port takes a number from 0 to 65535, not \`${options.get('port')}\``)
  const dir = mkdtempSync(join(tmpdir(), 'fettle-preview-'))
  const site = join(dir, 'site')
  const progress = startProgress()
  const listeners = new Set<ServerResponse>()
  const script = await previewScript()
  let tail = ''
  const tell = ({ loaded, findings }: Checked, current: boolean) => {
    tail = previewTail(findings, loaded.texts, current)
    for (const listener of listeners) listener.write('data: checked\n\n')
  }

  const rebuild = async () => {
    const checked = await checkFolder(folder, options)
    const { loaded, machine, findings, accepted } = checked
    const counts = countFindings(findings)
    if (findings.length > 0 || accepted.length > 0) process.stdout.write(reportText(findings, loaded.texts, counts, sharesOf(machine), accepted))
    if (counts.errors > 0 || !machine) {
      progress.done('the last build without errors is still shown')
      tell(checked, false)
      return
    }
    const built = await buildSite({ machine, counts, accepted, outDir: site, zip: false, preview: true, progress })
    if ('refused' in built) {
      progress.done(`not built: ${built.refused}`)
      tell(checked, false)
      return
    }
    tell(checked, true)
  }

  const server = createServer((request, response) => {
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
    if (!existsSync(site)) {
      response.writeHead(200, { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store' }).end(notBuiltYet + tail)
      return
    }
    const file = resolve(site, `.${path.endsWith('/') ? `${path}index.html` : path}`)
    if (!file.startsWith(site + sep) || !statSync(file, { throwIfNoEntry: false })?.isFile()) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('not in this manual\n')
      return
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream', 'cache-control': 'no-store' })
    if (extname(file) !== '.html') createReadStream(file).pipe(response)
    else
      createReadStream(file)
        .on('end', () => response.end(tail))
        .pipe(response, { end: false })
  })

  await rebuild()
  const listening = await new Promise<string | undefined>((done) => {
    server.once('error', (error) => done(error.message))
    server.listen(port, '127.0.0.1', () => done(undefined))
  })
  if (listening !== undefined) {
    rmSync(dir, { recursive: true, force: true })
    throw new UsageError(`port ${port} cannot be used: ${listening}; choose another with --port`)
  }
  const address = server.address()
  progress.done(`http://127.0.0.1:${typeof address === 'object' && address ? address.port : port}/  (end with Ctrl+C)`)

  let building = Promise.resolve()
  const stopWatching = watchFolders([folder, sharedDir(options)], () => {
    building = building.then(rebuild).catch((error: unknown) => progress.done(String(error)))
  })
  await new Promise<void>((stop) => process.once('SIGINT', stop).once('SIGTERM', stop))
  stopWatching()
  server.closeAllConnections()
  server.close()
  rmSync(dir, { recursive: true, force: true })
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
