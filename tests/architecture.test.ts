import { readdirSync, readFileSync } from 'node:fs'
import { posix } from 'node:path'
import { describe, expect, test } from 'vitest'
import { unusedByViews } from '../src/cli/kept-views.ts'

/**
 * What each folder of `src/` may import, besides itself: the table of DEVELOPERS.md. A folder that is not in
 * it may import nothing. `types of` a folder: `import type` only.
 */
const mayImport = readTable(readFileSync('DEVELOPERS.md', 'utf8'))

function readTable(text: string): Map<string, readonly string[]> {
  const [, ...rows] = /^\| folder \|(?:.*\n\|)+.*/m.exec(text)?.[0].split('\n').slice(1) ?? []
  const folders = readdirSync('src')
  return new Map(
    rows.flatMap((row) => {
      const [, from = '', to = ''] = row.split('|').map((cell) => cell.trim())
      const allowed = to.startsWith('everything') ? folders : to.replace('and the types of', 'types of').split(', ')
      return from.split(', ').map((folder) => [folder, allowed] as const)
    }),
  )
}

/** Where a thing that only `cli/` may do is done elsewhere, and why. */
const exceptions: Record<string, string> = {
  'bundle/zip.ts: new Date(': 'the fixed date that every entry of a zip carries',
  'site/compile-pages.ts: process.': 'Astro reads its root and its telemetry setting from the process',
}

interface Import {
  file: string
  target: string
  typeOnly: boolean
}

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => /\.(ts|astro)$/.test(path))
  .sort()
const texts = new Map(files.map((file) => [file, withoutComments(readFileSync(`src/${file}`, 'utf8'))]))

/** Block comments, and lines that are a comment. */
function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '')
}

/** Every import of a file of ours: static, `export … from`, and `import('…')`. */
function importsOf(file: string, text: string): Import[] {
  const found = text.matchAll(/(?:^|\n)\s*(?:import|export)\s+(type\s)?[^'"`;]*?from\s*['"](\.[^'"]+)['"]|\bimport\(?\s*['"](\.[^'"]+)['"]/g)
  return [...found].map(([, type, from, bare]) => ({
    file,
    target: posix.normalize(posix.join(posix.dirname(file), from ?? bare ?? '')),
    typeOnly: type !== undefined,
  }))
}

const folderOf = (path: string) => path.split('/')[0] ?? ''

/** What a file imports against the table. */
function wrongImports(file: string, text: string): string[] {
  const allowed = mayImport.get(folderOf(file)) ?? []
  return importsOf(file, text).flatMap(({ target, typeOnly }) => {
    const to = folderOf(target)
    const fine = to === folderOf(file) || allowed.includes(to) || (typeOnly && allowed.includes(`types of ${to}`))
    return fine ? [] : [`${file} imports ${to}/`]
  })
}

test('DEVELOPERS.md says nothing twice', () => {
  const beginnings = readFileSync('DEVELOPERS.md', 'utf8')
    .split('\n')
    .filter((line) => line.length > 60)
    .map((line) => line.slice(0, 55))
  expect(beginnings.filter((it, index) => beginnings.indexOf(it) !== index)).toEqual([])
})

describe('imports', () => {
  test('have a row for every folder', () => {
    expect([...mayImport.keys()].sort()).toEqual(readdirSync('src').sort())
    expect(mayImport.get('report')).toEqual(['source', 'types of changes', 'types of check'])
  })

  test('follow the table', () => {
    expect([...texts].flatMap(([file, text]) => wrongImports(file, text))).toEqual([])
  })

  test('name files that exist, with their ending', () => {
    const known = new Set([...files, ...readdirSync('src', { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll('\\', '/'))])
    const lost = [...texts].flatMap(([file, text]) => importsOf(file, text)).filter(({ target }) => !target.startsWith('../') && !known.has(target))
    expect(lost).toEqual([])
  })

  test('go round in no circle', () => {
    // A component may show itself again: a caution is a body inside a body.
    const graph = new Map(
      [...texts].map(([file, text]) => [file, importsOf(file, text).filter(({ target, typeOnly }) => !typeOnly && !target.endsWith('.astro'))]),
    )
    const done = new Set<string>()
    const circleFrom = (file: string, path: readonly string[]): readonly string[] | undefined => {
      if (path.includes(file)) return [...path.slice(path.indexOf(file)), file]
      if (done.has(file)) return undefined
      for (const { target } of graph.get(file) ?? []) {
        const circle = circleFrom(target, [...path, file])
        if (circle) return circle
      }
      done.add(file)
      return undefined
    }
    expect(files.flatMap((file) => circleFrom(file, []) ?? [])).toEqual([])
  })

  test('bring no source to a page that the key of the kept views leaves out', () => {
    const run = new Set(['site/pages/index.astro', 'site/page-server.ts'])
    for (const file of run) for (const { target } of importsOf(file, texts.get(file) ?? '')) run.add(target)
    expect(run.size).toBeGreaterThan(400)
    expect([...run].filter((file) => unusedByViews.has(folderOf(file)))).toEqual([])
  })

  test.each([
    ['source/a.ts', "import { x } from '../model/b.ts'", ['source/a.ts imports model/']],
    ['report/a.ts', "import type { Rule } from '../check/rule.ts'", []],
    ['report/a.ts', "import { rules } from '../check/rules.ts'", ['report/a.ts imports check/']],
    ['check/rules/a.ts', "import {\n  a,\n  b,\n} from '../../load/link.ts'", ['check/rules/a.ts imports load/']],
    ['load/a.ts', "export { x } from '../cli/main.ts'", ['load/a.ts imports cli/']],
    ['load/a.ts', "const x = await import('../site/main.ts')", ['load/a.ts imports site/']],
    ['bundle/a.ts', "import '../model/a.ts'", ['bundle/a.ts imports model/']],
    ['model/a.ts', "import { z } from 'zod'\nimport type { Words } from './words.ts'", []],
  ])('%s with %s', (file, text, expected) => expect(wrongImports(file, text)).toEqual(expected))
})

/** What only `cli/` may do. The scripts of the site run in a browser, where they may. */
const reserved = ['console.', 'process.', 'new Date(', 'Date.now(', 'Math.random(', 'performance.now(', 'localeCompare(', 'toLocale']
const inBrowser = /^(site\/scripts|search\/runtime)\//

function reservedUses(file: string, text: string): string[] {
  if (folderOf(file) === 'cli' || inBrowser.test(file)) return []
  return reserved.filter((use) => text.includes(use)).map((use) => `${file}: ${use}`)
}

describe('printing, exiting, the clock, chance and the locale', () => {
  test('are left to cli and the browser', () => {
    const uses = [...texts].flatMap(([file, text]) => reservedUses(file, text))
    expect(uses.sort()).toEqual(Object.keys(exceptions).sort())
  })

  test.each([
    ['load/a.ts', 'console.log(1)', ['load/a.ts: console.']],
    ['check/a.ts', 'const now = Date.now()', ['check/a.ts: Date.now(']],
    ['cli/a.ts', 'process.exit(1)', []],
    ['site/scripts/a.ts', 'new Date()', []],
  ])('%s with %s', (file, text, expected) => expect(reservedUses(file, text)).toEqual(expected))
})

test('a rule takes under 80 lines, a file under 300', () => {
  const long = [...texts].map(([file]) => [file, readFileSync(`src/${file}`, 'utf8').split('\n').length] as const)
  expect(long.filter(([file, lines]) => lines > (file.startsWith('check/rules/') ? 80 : 300))).toEqual([])
})
