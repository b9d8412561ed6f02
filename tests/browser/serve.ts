import { createReadStream, statSync } from 'node:fs'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, resolve, sep } from 'node:path'

const types: Record<string, string> = {
  '.avif': 'image/avif',
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.gif': 'image/gif',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpeg': 'image/jpeg',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webp': 'image/webp',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
  '.zip': 'application/zip',
}

export interface ServeOptions {
  /** The folder's address on the server, `/` at both ends: a bundle must work below any of them. */
  prefix?: string
  /** The server closes by itself after this time, so that a test that fails leaves nothing running. */
  lifetimeMs?: number
}

export interface Served {
  /** `http://127.0.0.1:<port><prefix>`, with the slash at its end. */
  url: string
  close(): Promise<void>
}

/** Serves a folder as a plain static server does, on 127.0.0.1 and any free port. */
export async function serveFolder(folder: string, { prefix = '/', lifetimeMs = 300_000 }: ServeOptions = {}): Promise<Served> {
  const root = resolve(folder)
  const server = createServer((request, response) => answer(root, prefix, request, response))
  const { url, close } = await listen(server, lifetimeMs)
  return { url: `${url}${prefix}`, close }
}

/** Lets a server listen on 127.0.0.1 and any free port until it is closed, at the longest for `lifetimeMs`. */
export async function listen(server: Server, lifetimeMs: number): Promise<Served> {
  await new Promise<void>((done, failed) => {
    server.once('error', failed)
    server.listen(0, '127.0.0.1', done)
  })
  const close = () =>
    new Promise<void>((done) => {
      clearTimeout(timer)
      server.close(() => done())
      server.closeAllConnections()
    })
  const timer = setTimeout(close, lifetimeMs)
  timer.unref()
  server.unref()
  return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, close }
}

type Reply = { file: string; size: number } | { status: number; location?: string }

function answer(root: string, prefix: string, request: IncomingMessage, response: ServerResponse): void {
  const reply = replyTo(root, prefix, request)
  if ('status' in reply) {
    const { status, location } = reply
    response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', ...(location && { location }) }).end(`${status}\n`)
    return
  }
  response.writeHead(200, {
    'content-type': types[extname(reply.file).toLowerCase()] ?? 'application/octet-stream',
    'content-length': reply.size,
    'x-content-type-options': 'nosniff',
  })
  if (request.method === 'HEAD') {
    response.end()
    return
  }
  const bytes = createReadStream(reply.file)
  bytes.on('error', () => response.destroy())
  bytes.pipe(response)
}

function replyTo(root: string, prefix: string, { method, url = '/' }: IncomingMessage): Reply {
  if (method !== 'GET' && method !== 'HEAD') return { status: 405 }
  const { pathname, search } = new URL(url, 'http://127.0.0.1')
  const path = decode(pathname)
  if (path === undefined || path.includes('\0')) return { status: 400 }
  if (!path.startsWith(prefix)) return { status: 404 }
  const place = resolve(root, `./${path.slice(prefix.length)}`)
  if (place !== root && !place.startsWith(root + sep)) return { status: 404 }
  const isFolder = statSync(place, { throwIfNoEntry: false })?.isDirectory() ?? false
  if (isFolder && !path.endsWith('/')) return { status: 301, location: `${pathname}/${search}` }
  if (!isFolder && path.endsWith('/')) return { status: 404 }
  const file = isFolder ? join(place, 'index.html') : place
  const found = statSync(file, { throwIfNoEntry: false })
  return found?.isFile() ? { file, size: found.size } : { status: 404 }
}

function decode(path: string): string | undefined {
  try {
    return decodeURIComponent(path)
  } catch {
    return undefined // a stray % sign
  }
}
