import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { reportFor } from '../../src/cli/check.ts'
import { commands } from '../../src/cli/commands.ts'
import { toolHash } from '../../src/cli/kept-key.ts'
import { unusedByCheck } from '../../src/cli/kept-report.ts'
import { parseOptions } from '../../src/cli/options.ts'

let dir: string
const at = (path: string) => join(dir, path)
const edit = (path: string, was: string | RegExp, is: string) => {
  const before = readFileSync(at(path), 'utf8')
  const after = before.replace(was, is)
  expect(after, path).not.toBe(before)
  writeFileSync(at(path), after)
}

beforeEach(() => {
  vi.stubEnv('SOURCE_DATE_EPOCH', '1780000000')
  dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  cpSync('tests/fixtures/sound-machine', at('machine'), { recursive: true })
  mkdirSync(at('content'))
})
afterEach(() => {
  vi.unstubAllEnvs()
  rmSync(dir, { recursive: true, force: true })
})

const check = (...options: string[]) => {
  const spec = commands.check
  if (!spec) throw new Error('no command')
  return reportFor(at('machine'), parseOptions([at('machine'), '--shared', at('content'), ...options], spec))
}

/** Checks the folder anew and twice with what is kept, of which the second must find it. */
async function checkThrice(...options: string[]): Promise<string> {
  const [anew, first, second] = [await check(...options, '--no-cache'), await check(...options), await check(...options)]
  expect(first).toEqual(anew)
  expect(second).toEqual({ ...anew, isKept: true })
  return anew.text
}

const page = '---\ntitle: More\n---\nSee <Tag id="XX-999" />.\n'

const changes: readonly [what: string, change: () => void][] = [
  ['a page that names an unknown device', () => edit('machine/pages/front/use.mdx', 'PS-101" />', 'PS-109" />')],
  ['another page', () => writeFileSync(at('machine/pages/front/more.mdx'), page)],
  ['a page less', () => rmSync(at('machine/pages/alarms/clamp.mdx'))],
  ['a page under another name', () => renameSync(at('machine/pages/lockout/lo-1.mdx'), at('machine/pages/lockout/renamed.mdx'))],
  ['a translation without its source', () => writeFileSync(at('machine/pages/front/none.es.mdx'), page)],
  ['a shared page', () => [mkdirSync(at('content/front')), writeFileSync(at('content/front/more.mdx'), page)]],
  ['a row of a table', () => edit('machine/data/io-list.csv', 'PS-102,DI,%IX0.1', 'PS-102,DI,%IX0.0')],
  ['a YAML list', () => edit('machine/data/energy.yaml', /tag: .*/, 'tag: XX-999')],
  ['a drawing', () => rmSync(at('machine/drawings/E-1.2.svg'))],
  ['an option of the unit', () => appendFileSync(at('machine/machine.yaml'), 'options: { fan: { en: Fan } }\n')],
  ['the severity of a rule', () => appendFileSync(at('machine/machine.yaml'), 'rules: { orphan-translation: note, no-such-rule: note }\n')],
  ['what is accepted', () => writeFileSync(at('machine/accepted.yaml'), '- rule: no-such-rule\n')],
]

test.each(changes)('after %s the report is that of a check that trusts nothing', async (_, change) => {
  const before = await checkThrice()
  change()
  expect(await checkThrice()).not.toBe(before)
})

test('a change that is taken back gives the first report', async () => {
  const before = await checkThrice()
  edit('machine/pages/front/use.mdx', 'PS-101" />', 'PS-109" />')
  await check()
  edit('machine/pages/front/use.mdx', 'PS-109" />', 'PS-101" />')
  expect(await checkThrice()).toBe(before)
})

test('each form and each unit has a report of its own', async () => {
  rmSync(at('machine/pages/alarms/clamp.mdx'))
  const texts = [await checkThrice(), await checkThrice('--format', 'json'), await checkThrice('--format', 'short')]
  expect(new Set(texts).size).toBe(3)
  await expect(check('--serial', 'none')).rejects.toThrow('no unit with the serial number')
  expect(await check()).toMatchObject({ code: 0, isKept: true })
})

test('a report is that of one day', async () => {
  await checkThrice()
  vi.stubEnv('SOURCE_DATE_EPOCH', String(1780000000 + 86_400))
  expect(await check()).toMatchObject({ isKept: false })
})

test('nothing is kept of a check that reads files which are in no list', async () => {
  mkdirSync(at('machine/.hidden'))
  renameSync(at('machine/data/io-list.csv'), at('machine/.hidden/io-list.csv'))
  edit('machine/machine.yaml', 'data/io-list.csv', '.hidden/io-list.csv')
  expect(await check()).toEqual(await check('--no-cache'))
  expect(await check()).toMatchObject({ isKept: false })
})

test('nothing is kept without the cache, and what is broken or cannot be written does no harm', async () => {
  const anew = await check('--no-cache')
  expect(readdirSync(at('machine'))).not.toContain('.fettle')
  await check()
  const [name = ''] = readdirSync(at('machine/.fettle/check'))
  for (const broken of ['', '{', '[]', '{"key":1,"text":"","code":0}']) {
    writeFileSync(at(`machine/.fettle/check/${name}`), broken)
    expect(await check()).toEqual(anew)
  }
  rmSync(at('machine/.fettle'), { recursive: true })
  writeFileSync(at('machine/.fettle'), 'a file where the folder would be')
  expect(await check()).toEqual(anew)
  expect(await check()).toEqual(anew)
})

test('another version of Fettle, of a dependency or of a source that a check runs is another tool', () => {
  mkdirSync(at('tool/src/check/rules'), { recursive: true })
  mkdirSync(at('tool/src/site'))
  for (const path of ['package.json', 'package-lock.json', 'src/check/rules/one.ts', 'src/site/page.ts']) writeFileSync(at(`tool/${path}`), '1')
  const seen = [toolHash(unusedByCheck, at('tool'))]
  for (const path of ['package.json', 'package-lock.json', 'src/check/rules/one.ts', 'src/check/rules/two.ts']) {
    writeFileSync(at(`tool/${path}`), '2')
    seen.push(toolHash(unusedByCheck, at('tool')))
  }
  expect(new Set(seen).size).toBe(5)
  writeFileSync(at('tool/src/site/page.ts'), '2')
  expect(toolHash(unusedByCheck, at('tool'))).toBe(seen.at(-1))
})
