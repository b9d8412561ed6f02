import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

let dir = ''
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-revised-'))
})
afterEach(() => rmSync(dir, { recursive: true, force: true }))

const lesson = (history: string, body = 'Look at the gauge.\n') =>
  `---\ntitle: Look\nrevision: B\nminutes: 5\nobjectives: [Look]\n${history}roles: [operator]\n---\n${body}`
const block =
  'history:\n  - { revision: A, date: "2026-01-02", change: text, what: First }\n  - revision: B\n    date: "2026-02-03"\n    change: procedure\n    what: Look twice # by the trainer\n'
const flow = 'history: [{ revision: B, date: "2026-02-03", change: text, what: First }]\n'

const path = () => join(dir, 'look.mdx')
const write = (text: string) => writeFileSync(path(), text)
const read = () => readFileSync(path(), 'utf8')
const revised = () => runFettle(['revised', path()])

describe('fettle revised', () => {
  test.each([
    ['in a block', block, /\n {4}hash: '[0-9a-f]{8}'/],
    ['in braces', flow, /, hash: '[0-9a-f]{8}'/],
  ])('stamps the last revision %s, keeps all else, and then has nothing to tell', async (_, history, added) => {
    write(lesson(history))
    expect(await revised()).toMatchObject({
      code: 0,
      stdout: expect.stringMatching(/look\.mdx: revision B of 2026-02-03 stamped for the first time\n$/),
    })
    const stamped = read()
    expect(stamped).toMatch(added)
    expect(stamped.replace(added, '')).toBe(lesson(history))
    expect((await revised()).stdout).toMatch(/is what it was\n$/)
    expect(read()).toBe(stamped)
  })

  test('tells that a lesson had changed, and renews its hash in place', async () => {
    write(lesson(flow))
    await revised()
    const before = read()
    write(before.replace('Look at the gauge.', 'Look at both gauges.'))
    expect((await revised()).stdout).toContain('had changed since it was stamped')
    expect(read().replace(/hash: '.{8}'/, '')).toBe(before.replace('Look at the gauge.', 'Look at both gauges.').replace(/hash: '.{8}'/, ''))
    expect(read()).not.toBe(before)
  })

  test('other spaces and line ends are no change, another right answer is', async () => {
    const questions = (right: string) => `questions: [{ ask: Which?, answers: [{ text: One${right} }, { text: Two }] }]\n`
    write(lesson(flow + questions(', right: true')))
    await revised()
    write(read().replaceAll('\n', '\r\n').replace('Look at', 'Look   at'))
    expect((await revised()).stdout).toMatch(/is what it was\n$/)
    write(read().replace('One, right: true', 'One').replace('text: Two', 'text: Two, right: true'))
    expect((await revised()).stdout).toContain('had changed')
  })

  test('a lesson without a history, or at another revision than its last, is not stamped', async () => {
    write(lesson(''))
    expect(await revised()).toMatchObject({ code: 1, stdout: expect.stringContaining('not stamped: it has no `history`') })
    write(lesson(flow.replace('revision: B', 'revision: A')))
    expect(await revised()).toMatchObject({ code: 1, stdout: expect.stringContaining('it is at revision B, and its history ends with A') })
    expect(read()).toBe(lesson(flow.replace('revision: B', 'revision: A')))
  })

  test('a page that is no lesson is refused at its place', async () => {
    write('---\ntitle: Look\n---\nLook.\n')
    expect(await revised()).toMatchObject({ code: 1, stdout: expect.stringMatching(/look\.mdx:\d+:\d+: error: .*revision/) })
  })

  test('says what it wants', async () => {
    expect(await runFettle(['revised', join(dir, 'look.es.mdx')])).toMatchObject({ code: 2, stderr: expect.stringContaining('is a translation') })
    expect(await runFettle(['revised', join(dir, 'none.mdx')])).toMatchObject({ code: 2, stderr: expect.stringContaining('there is no file') })
  })
})
