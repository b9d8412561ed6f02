import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

let dir: string
const at = (path: string) => join(dir, 'machine', path)
const edit = (path: string, was: string, is: string) => writeFileSync(at(path), readFileSync(at(path), 'utf8').replace(was, is))
const on = (day: string) => ({ SOURCE_DATE_EPOCH: String(Date.parse(day) / 1000) })
const shared = () => ['--shared', join(dir, 'none')]
const build = (name: string, day: string) => runFettle(['build', at(''), ...shared(), '--out', join(dir, name), '--no-zip'], on(day))
const readOf = (name: string, file: string) => readFileSync(join(dir, name, file), 'utf8')

beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  mkdirSync(join(dir, 'none'))
  cpSync('tests/fixtures/sound-machine', at(''), { recursive: true })
  appendFileSync(at('machine.yaml'), 'rules: { duplicate-address: warning, tag-grammar: warning, orphan-translation: note }\n')
  edit('data/io-list.csv', 'PS-102,DI,%IX0.1', 'PS-102,DI,%IX0.0')
  edit('data/devices.csv', 'PS-102,pressure', 'xx!,thing,Odd,,press,,,,\nPS-102,pressure')
  writeFileSync(at('pages/front/none.es.mdx'), '---\ntitle: X\n---\nTexto.\n')
  rmSync(at('pages/alarms/clamp.mdx'))
  edit('pages/front/use.mdx', 'PS-101" />', 'PS-101" /> on <Drawing number="E-1" sheet="2" tag="PS-101" />')
  writeFileSync(
    at('accepted.yaml'),
    '- rule: alarm-without-recovery\n  file: data/alarms.csv\n  message: alarm `A01` has no recovery\n  reason: the page comes <later> this year\n  until: "2027-03-31"\n',
  )
})
afterAll(() => rmSync(dir, { recursive: true, force: true }))

test('lowered and accepted findings are told and stop nothing', async () => {
  const ran = await runFettle(['check', at(''), ...shared()], on('2027-03-31'))
  expect(ran.code).toBe(0)
  expect(ran.stdout).toContain('accepted until 2027-03-31: the page comes <later> this year')
  expect(ran.stdout).toMatch(/: 0 errors, 3 warnings, 1 note, accepted 1\n$/)
})

test('the about page tells what was accepted and why, no page tells what was found, and the day of the build changes nothing', async () => {
  expect(await build('one', '2026-06-01')).toMatchObject({ code: 0 })
  expect(await build('two', '2027-03-31')).toMatchObject({ code: 0 })
  expect(readOf('two', 'manifest.json')).toBe(readOf('one', 'manifest.json'))
  expect(readOf('one', 'front/use.html')).not.toMatch(/data-source-|fettle-findings/)
  expect(readOf('one', 'about.html')).toContain('Accepted for a while: 1')
  expect(readOf('one', 'about.html')).toContain('the page comes &lt;later&gt; this year')
}, 60_000)

test('the day after, the build is refused', async () => {
  const ran = await build('three', '2027-04-01')
  expect(ran.code).toBe(1)
  expect(ran.stdout).toContain('this acceptance ended on 2027-03-31')
})

test('a date that is none is refused', async () => {
  const ran = await runFettle(['check', at('')], { SOURCE_DATE_EPOCH: 'soon' })
  expect(ran.code).toBe(2)
  expect(ran.stderr).toContain('SOURCE_DATE_EPOCH')
})
