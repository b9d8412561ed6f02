import { once } from 'node:events'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { launchChromium, openPage } from './chromium.ts'
import { serveFolder } from './serve.ts'

const panel = { width: 1024, height: 768, touch: true }

let browser: Browser
let folder: string

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle browser #ü '))
  browser = await launchChromium()
}, 900_000)

afterAll(async () => {
  await browser?.close()
  rmSync(folder, { recursive: true, force: true })
})

function write(name: string, html: string): string {
  writeFileSync(join(folder, name), `<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>Tank 1</title>${html}`)
  return pathToFileURL(join(folder, name)).href
}

test('a page without fault leaves every list empty, from disk and from a sub-folder of a server', async () => {
  const fromDisk = write('sound page.html', '<script src="sound.js"></script><h1>Wash tank</h1>')
  writeFileSync(join(folder, 'sound.js'), 'document.title += " ready"')
  const server = await serveFolder(folder, { prefix: '/manuals/rcw/' })
  for (const address of [fromDisk, `${server.url}sound%20page.html`]) {
    const opened = await openPage(browser, panel)
    await opened.page.goto(address)
    expect(await opened.page.title()).toBe('Tank 1 ready')
    expect(await opened.page.evaluate(() => [innerWidth, innerHeight, navigator.maxTouchPoints > 0])).toEqual([1024, 768, true])
    expect(opened.faults()).toEqual([])
    await opened.close()
  }
  await server.close()
})

test('console lines, uncaught errors and missing files are collected', async () => {
  const opened = await openPage(browser, panel)
  await opened.page.goto(write('faulty.html', '<img src="absent.png" alt=""><script>console.warn("low level"); throw new Error("pump")</script>'))
  expect(opened.consoleLines.join('\n')).toContain('warning: low level (file://')
  expect(opened.pageErrors).toEqual(['pump'])
  expect(opened.failedRequests).toEqual([expect.stringMatching(/^net::ERR_FILE_NOT_FOUND file:.*absent\.png$/)])
  expect(opened.blockedRequests).toEqual([])
  await opened.close()
})

test('nothing outside the folder is reached, whichever way a page asks for it', async () => {
  const opened = await openPage(browser, panel)
  await opened.page.goto(
    write(
      'outward.html',
      `<img src="https://outside.example/a.png" alt=""><link rel="stylesheet" href="http://192.0.2.1/b.css">
       <script>new WebSocket('ws://outside.example/c'); fetch('https://outside.example/d').catch(() => 0)</script>`,
    ),
  )
  await expect
    .poll(() => opened.blockedRequests.toSorted())
    .toEqual(['http://192.0.2.1/b.css', 'https://outside.example/a.png', 'https://outside.example/d', 'ws://outside.example/c'])
  await opened.close()
})

test('a server that sends the page elsewhere does not get it there', async () => {
  const asked: string[] = []
  const server = createServer((request, response) => {
    asked.push(`${request.headers.host?.split(':')[0]}${request.url}`)
    response.writeHead(302, { location: `http://localhost:${port()}/elsewhere` }).end()
  }).listen(0, '127.0.0.1')
  const port = () => (server.address() as AddressInfo).port
  await once(server, 'listening')
  const opened = await openPage(browser, panel)
  const reply = await opened.page.goto(`http://127.0.0.1:${port()}/`).catch((error: Error) => error.message)
  expect(reply).toContain('net::ERR_NAME_NOT_RESOLVED')
  expect(opened.blockedRequests).toEqual([`http://localhost:${port()}/elsewhere`])
  expect(asked).toEqual(['127.0.0.1/'])
  await opened.close()
  server.close()
})

test('with no browser to start, the error says what was tried and what to do', async () => {
  const absent = { name: 'FETTLE_CHROMIUM', only: true, find: async () => [{ executablePath: join(folder, 'no-browser'), env: {} }] }
  const message = await launchChromium({ from: [absent] }).then(
    () => 'it started',
    (error: Error) => error.message,
  )
  expect(message).toContain('no-browser')
  expect(message).toContain('set FETTLE_CHROMIUM to the full path')
})
