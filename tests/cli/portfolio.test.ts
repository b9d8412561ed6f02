import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { jobsFor } from '../../src/cli/portfolio/planned-builds.ts'
import { editFile } from './edit-file.ts'
import { type Ran, runFettle } from './run-fettle.ts'

let dir: string
let cold: Ran
const at = (path: string) => join(dir, path)
const edit = (path: string, was: string, is: string) => editFile(at(path), was, is)
const build = (...words: string[]) => runFettle(['build', ...words, '--shared', at('content')])
/** `machine state` of each row of a summary. */
const states = ({ stdout }: Ran) =>
  [...stdout.matchAll(/^(\S+) .* (\d+\.\d) {2}(built|unchanged|refused|not built)$/gm)].map(
    ([, machine = '', , state]) => `${machine.slice(dir.length + 1)} ${state}`,
  )

/** A press with a fan motor, one without, and a folder with an error. */
beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  cpSync('content', at('content'), { recursive: true })
  for (const name of ['fan', 'plain', 'wrong']) {
    cpSync('tests/fixtures/sound-machine', at(`machines/${name}`), { recursive: true })
    edit(`machines/${name}/machine.yaml`, 'id: tiny', `id: press-${name}`)
  }
  edit('machines/plain/machine.yaml', "{ serial: '001', fitted: [fan] }", "{ serial: '003', fitted: [] }")
  writeFileSync(at('machines/wrong/pages/front/use.mdx'), '---\ntitle: Use\n---\nSee <Tag id="NO-1" />.\n')
  cold = await build(at('machines/fan'), at('machines/wrong'), at('machines/plain'), '--out', at('out'))
}, 180_000)
afterAll(() => rmSync(dir, { recursive: true, force: true }))

test('one refused machine stops no other, and each is told in its place and in the summary', () => {
  expect(cold.code).toBe(1)
  expect(states(cold)).toEqual(['machines/fan built', 'machines/wrong refused', 'machines/plain built'])
  expect(cold.stdout).toMatch(/^\S+wrong +P 10 +001 +- +[1-9]\d* +\d+ +\d+\.\d +refused$/m)
  expect(cold.stdout).toMatch(/\n3 machines: 2 built, 1 refused; \d+\.\d s, at most \d+ at once\n$/)
  expect(cold.stdout.indexOf('no device has the tag `NO-1`')).toBeLessThan(cold.stdout.indexOf('serial no.'))
  expect(cold.stderr.split('\n').filter((line) => line.startsWith('== '))).toEqual(
    ['fan', 'wrong', 'plain'].map((name) => `== ${at(`machines/${name}`)}`),
  )
  const parts = cold.stderr.split(/^== .*\n/m).slice(1)
  expect(
    parts.map((part) =>
      part
        .split('\n')
        .at(-2)
        ?.replace(/^\d+ pages.*/, 'pages'),
    ),
  ).toEqual(['pages', 'not built: the pages do not agree with the machine. An earlier build is left as it was.', 'pages'])
  expect(readdirSync(at('out')).filter((name) => !name.startsWith('.'))).toEqual([
    'index.es.html',
    'index.html',
    'press-fan',
    'press-fan.zip',
    'press-plain',
    'press-plain.zip',
  ])
  expect(readFileSync(at('out/index.html'), 'utf8')).toMatch(/href="press-fan\/index.html"[\s\S]*href="press-plain\/index.html"/)
})

test('a shared lesson that changes builds again who takes it, and what is left is what a build would make', async () => {
  edit('content/lessons/check-motor.mdx', 'Keep the covers on', 'Leave the covers on')
  const ran = await build(at('machines/fan'), at('machines/plain'), '--out', at('out'), '--jobs', '2')
  expect(states(ran)).toEqual(['machines/fan built', 'machines/plain unchanged'])
  expect(ran.code).toBe(0)
  const again = await build(at('machines/plain'), at('machines/fan'), '--out', at('out'))
  expect(states(again)).toEqual(['machines/plain unchanged', 'machines/fan unchanged'])

  const anew = await build(at('machines/plain'), at('machines/wrong'), '--out', at('anew'), '--no-cache')
  expect(states(anew)).toEqual(['machines/plain built', 'machines/wrong refused'])
  for (const file of ['press-plain/SHA256SUMS', 'press-plain.zip'])
    expect(readFileSync(at(`out/${file}`)).equals(readFileSync(at(`anew/${file}`))), file).toBe(true)
  expect(existsSync(at('out/.press-plain.built.json'))).toBe(true)
  expect(existsSync(at('anew/.press-plain.built.json'))).toBe(false)
  // With a build in place, too, it trusts nothing.
  expect(states(await build(at('machines/plain'), at('machines/wrong'), '--out', at('out'), '--no-cache', '--no-zip'))).toEqual(states(anew))
}, 120_000)

test('a build that goes along with its folder is left there as well', async () => {
  cpSync(at('out/press-fan'), at('moved/press-fan'), { recursive: true })
  cpSync(at('out/press-fan.zip'), at('moved/press-fan.zip'))
  cpSync(at('out/.press-fan.built.json'), at('moved/.press-fan.built.json'))
  cpSync(at('machines/fan'), at('elsewhere/deeper/fan'), { recursive: true })
  expect(states(await build(at('elsewhere/deeper/fan'), '--jobs', '1', '--out', at('moved')))).toEqual(['elsewhere/deeper/fan unchanged'])
})

test('what cannot work is said before anything is built', async () => {
  cpSync(at('machines/plain'), at('machines/twin'), { recursive: true })
  const refused = async (says: string, ...words: string[]) => {
    const ran = await build(...words, '--out', at('none'))
    expect(ran).toMatchObject({ code: 2, stdout: '' })
    expect(ran.stderr).toContain(says)
    expect(existsSync(at('none'))).toBe(false)
  }
  await refused(
    `\`${at('machines/plain')}\` and \`${at('machines/twin')}\` would both be built into \`${at('none/press-plain')}\``,
    at('machines/plain'),
    at('machines/fan'),
    at('machines/twin'),
  )
  await refused('would both be built into', at('machines/fan'), at('machines/fan'))
  await refused('--serial names a unit of one machine', at('machines/fan'), at('machines/plain'), '--serial', '001')
  await refused('--jobs takes a number from 1 to 9999, not `0`', at('machines/fan'), at('machines/plain'), '--jobs', '0')
})

test('a page of somebody else is never replaced by the start page', async () => {
  cpSync('README.md', at('own/index.html'))
  expect(await build(at('machines/fan'), at('machines/plain'), '--out', at('own'))).toMatchObject({ code: 2, stdout: '' })
  expect(readdirSync(at('own'))).toEqual(['index.html'])
  const itself = await build(at('machines/fan'), at('machines/plain'), '--out', at('out/press-fan'))
  expect(itself).toMatchObject({ code: 2, stdout: '' })
  expect(itself.stderr).toContain('is a built machine itself')
})

test('the start page of a folder is written anew from what lies there', async () => {
  const page = readFileSync(at('out/index.html'), 'utf8')
  cpSync(at('out'), at('shown'), { recursive: true })
  rmSync(at('shown/index.html'))
  expect(await runFettle(['start-page', at('shown')])).toMatchObject({ code: 0, stdout: '' })
  expect(readFileSync(at('shown/index.html'), 'utf8')).toBe(page)
  rmSync(at('shown/press-fan'), { recursive: true })
  await runFettle(['start-page', at('shown')])
  expect(readFileSync(at('shown/index.html'), 'utf8')).not.toContain('press-fan')
  expect(await runFettle(['start-page', at('machines')])).toMatchObject({
    code: 2,
    stderr: `fettle start-page: no built machine lies in \`${at('machines')}\`\n`,
  })
})

test('machines are built one a core, and no more than there are or than was asked for', () => {
  const options = (jobs?: string) => ({ help: false, words: [], get: () => jobs, all: () => [], has: () => jobs !== undefined })
  expect(jobsFor(options('7'), 100)).toBe(7)
  expect(jobsFor(options('7'), 3)).toBe(3)
  expect(jobsFor(options(), 1)).toBe(1)
  expect(jobsFor(options(), 1000)).toBeLessThan(1000)
})
