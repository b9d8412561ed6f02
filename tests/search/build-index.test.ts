import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parse } from 'parse5'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Terms } from '../../src/search/entry.ts'
import { partElements, readIndexedPage } from '../../src/search/page-words.ts'
import { buildSearch } from './build-search.ts'
import { makeSite } from './site.ts'

let folder: string

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle search '))
})

afterAll(() => rmSync(folder, { recursive: true, force: true }))

function filesOf(dir: string): Map<string, string> {
  const paths = readdirSync(dir, { recursive: true, withFileTypes: true }).flatMap((entry) =>
    entry.isFile() ? [join(entry.parentPath, entry.name)] : [],
  )
  return new Map(paths.sort().map((path) => [path.slice(dir.length + 1), readFileSync(path, 'latin1')]))
}

test('the same pages give the same bytes, in any folder and order of files', async () => {
  const forwards = makeSite(join(folder, 'one'), { more: 60 })
  const backwards = makeSite(join(folder, 'another'), { more: 60, backwards: true })
  expect(await buildSearch(forwards)).toEqual({ files: expect.any(Number), pages: 79 })
  await buildSearch(backwards)
  const first = filesOf(forwards.outDir)
  expect(first.size).toBeGreaterThan(20)
  expect(filesOf(backwards.outDir)).toEqual(first)
  // A second run over the same folder as well.
  await buildSearch(forwards)
  expect(filesOf(forwards.outDir)).toEqual(first)
})

test('every file is a classic script, and passages share files', async () => {
  const site = makeSite(join(folder, 'scripts'), { more: 300 })
  const { files, pages } = await buildSearch(site)
  const written = filesOf(site.outDir)
  expect([files, pages]).toEqual([written.size, 319])
  expect([...written.keys()].filter((path) => path.startsWith('fragment')).length).toBeLessThan(30)
  for (const [path, script] of written) {
    expect(path).toMatch(/\.js$/)
    expect(script).not.toMatch(/\bimport\s*\(|^\s*(import|export)\b|XMLHttpRequest|importScripts|\bfetch\(/m)
    if (path !== 'core.js') expect(script.startsWith(`__fettleData("${path.replace(/\.js$/, '')}",`)).toBe(true)
  }
})

test('each language has its own names, words and synonyms', async () => {
  const site = makeSite(join(folder, 'languages'))
  await buildSearch(site)
  const terms = (language: string): Terms =>
    JSON.parse(/^__fettleData\("terms\.\w+",(.*)\);\n$/.exec(readFileSync(join(site.outDir, `terms.${language}.js`), 'utf8'))?.[1] ?? '')
  expect(terms('es').entries.map(({ path }) => path)).toEqual(['es/tags/PRS104.html', 'es/alarms/A0217.html', 'es/parts/2217-0040.html'])
  expect(terms('es').words).toContain('valvula')
  expect(terms('es').words).not.toContain('strainer')
  expect(terms('es').synonyms).toEqual([['detector inductivo', 'sensor de proximidad']])
  const { words, counts } = terms('en')
  expect(counts).toHaveLength(words.length)
  expect(words).toEqual(words.toSorted())
  const count = (word: string) => counts[words.indexOf(word)]
  // One page; one page but a word of a title; five pages, as a power of two; a page that is not indexed.
  expect([count('strainer'), count('nozzle'), count('tank'), count('zeppelin')]).toEqual(['0', '1', '2', undefined])
})

test('words come from the indexed part of a page alone', () => {
  const html = `<html lang="EN"><body><nav>Menu</nav><main data-pagefind-body><h1>Pre-wash</h1><p>Pump 7 of <b>LS12</b>
    <script>run()</script><span data-pagefind-ignore>Hidden</span></p></main></body></html>`
  expect(readIndexedPage(parse(html))).toEqual({ language: 'en', words: ['pre', 'wash', 'prewash', 'pump', 'of'] })
  expect(readIndexedPage(parse('<html lang="en"><body><p>Not indexed</p></body></html>'))).toBeUndefined()
})

test('words that a browser shows apart are parted', () => {
  expect(partElements('<span>E-104</span><span>Lift</span><small>Sheet 1</small>')).toBe(
    '<span>E-104</span> <span>Lift</span> <small>Sheet 1</small>',
  )
  expect(partElements('<span>Lift<small>Sheet 1</small></span>')).toBe('<span>Lift <small>Sheet 1</small> </span>')
  expect(partElements('<dt>Time</dt><dd>40 min</dd>')).toBe('<dt>Time</dt> <dd>40 min</dd>')
  expect(partElements('<b>H</b><sub>2</sub>O')).toBe('<b>H</b><sub>2</sub>O')
  expect(partElements('the <b>pump</b>, then')).toBe('the <b>pump</b>, then')
})

test('a site without an indexed page is no fault', async () => {
  const site = makeSite(join(folder, 'names'))
  const siteDir = join(folder, 'bare')
  mkdirSync(siteDir)
  writeFileSync(join(siteDir, 'index.html'), '<html lang="en"><body><p>Start</p></body></html>')
  expect(await buildSearch({ ...site, siteDir, outDir: join(siteDir, 'search') })).toEqual({ files: 3, pages: 0 })
})
