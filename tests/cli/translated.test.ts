import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

let dir = ''
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-translated-'))
})
afterEach(() => rmSync(dir, { recursive: true, force: true }))

const source = '---\ntitle: Care\nsummary: How.\n---\n## Every day\n\nWipe it.\n\n<Include caution="hot" />\n'
const own = '---\ntitle: Cuidado # from the sheet\nsummary: Cómo.\n---\n## Cada día\n\nLímpielo.\n\n<Include caution="hot" />\n'

const write = (name: string, text: string) => writeFileSync(join(dir, name), text)
const read = () => readFileSync(join(dir, 'care.es.mdx'), 'utf8')
const translated = () => runFettle(['translated', join(dir, 'care.es.mdx')])

describe('fettle translated', () => {
  test('stamps a translation, keeps all else of it, and then has nothing to tell', async () => {
    write('care.mdx', source)
    write('care.es.mdx', own)
    expect((await translated()).stdout).toMatch(/care\.es\.mdx: 3 blocks\n {2}stamped for the first time\n$/)
    const stamped = read()
    const added = /source:\n {2}title: '[0-9a-f]{8}'\n {2}summary: '[0-9a-f]{8}'\n {2}body: \[('[0-9a-f]{8}'(, )?){3}\]\n/
    expect(stamped).toMatch(added)
    expect(stamped.replace(added, '')).toBe(own)
    expect((await translated()).stdout).toMatch(/3 blocks, nothing had changed\n$/)
    expect(read()).toBe(stamped)
  })

  test('tells which blocks and texts had changed, and renews their hashes in their place', async () => {
    write('care.mdx', source)
    write('care.es.mdx', own.replace('title:', "source: { body: ['00000000', '11111111', '22222222'] }\ntitle:"))
    const { stdout } = await translated()
    expect(stdout).toContain('care.es.mdx:3: `title` added in the source')
    expect(stdout).toContain('care.es.mdx:8: changed in the source, ')
    expect(read()).toMatch(/^---\nsource:\n {2}title: '[0-9a-f]{8}'\n {2}summary: '[0-9a-f]{8}'\n {2}body: \[.*\]\ntitle: Cuidado/)
    expect((await translated()).stdout).toMatch(/nothing had changed\n$/)
  })

  test('keeps Windows line ends', async () => {
    write('care.mdx', source)
    write('care.es.mdx', own.replaceAll('\n', '\r\n'))
    await translated()
    expect(read().replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    expect((await translated()).stdout).toMatch(/nothing had changed\n$/)
  })

  test.each([
    ['a block less', own.replace('Límpielo.\n\n', ''), 'is of another kind than the one at'],
    ['a block more', `${own}\nMás.\n`, 'it has 4 blocks, and its source 3'],
    ['no title', own.replace('title: Cuidado # from the sheet\n', ''), 'has no `title`'],
  ])('does not stamp a translation with %s', async (_, text, says) => {
    write('care.mdx', source)
    write('care.es.mdx', text)
    const ran = await translated()
    expect(ran.code).toBe(1)
    expect(ran.stdout).toContain(says)
    expect(ran.stdout).toContain('not stamped')
    expect(read()).toBe(text)
  })

  test('wants a translation with its source beside it', async () => {
    write('care.mdx', source)
    write('alone.es.mdx', own)
    expect(await runFettle(['translated', join(dir, 'care.mdx')])).toMatchObject({ code: 2, stderr: expect.stringContaining('is no translation') })
    expect(await runFettle(['translated', join(dir, 'alone.es.mdx')])).toMatchObject({ code: 2, stderr: expect.stringContaining('has no source') })
    expect(await runFettle(['translated'])).toMatchObject({ code: 2, stderr: expect.stringContaining('<file…> is missing') })
  })
})
