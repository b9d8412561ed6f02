import { describe, expect, test } from 'vitest'
import { runFettle, startFettle } from './run-fettle.ts'

describe('fettle', () => {
  test.each([
    [[], 2, /usage: fettle/],
    [['--help'], 0, /check .*\n.*build/],
    [['check', '--help'], 0, /--format <form>/],
    [['explain', 'unknown-tag'], 0, /Why it matters|why/i],
    [['explain'], 0, /unknown-tag +error/],
    [['--version'], 0, /^\d+\.\d+\.\d+\n$/],
  ])('%j ends with %i and says what it should', async (args, code, says) => {
    const ran = await runFettle(args)
    expect(ran.code).toBe(code)
    expect(ran.stdout).toMatch(says)
  })

  test.each([
    [['chekc'], /there is no command `chekc`/],
    [['check'], /<folder> is missing/],
    [['check', 'a', 'b'], /`b` is one word too many/],
    [['check', 'example-machine', '--format', 'xml'], /--format takes text, short, json, sarif, junit, not `xml`/],
    [['check', 'example-machine', '--fromat', 'json'], /there is no option '--fromat'/],
    [['check', 'example-machine', '--serial', '9'], /no unit with the serial number `9`/],
    [['explain', 'unknown-thing'], /there is no rule `unknown-thing`/],
    [['preview', 'example-machine', '--port', 'http'], /--port takes a number/],
  ])('%j is refused with exit code 2', async (args, says) => {
    const ran = await runFettle(args)
    expect(ran.code).toBe(2)
    expect(ran.stderr).toMatch(says)
  })
})

describe('fettle check', () => {
  test('the example machine has no finding, in every form', async () => {
    const text = await runFettle(['check', 'example-machine'])
    expect(text).toMatchObject({ code: 0, stderr: '' })
    expect(text.stdout).toMatch(/^devices with a description +125 of 125\n[\s\S]*\n\n\d+ pages, 125 devices, 18 alarms, .*: 0 errors, 0 warnings\n$/)
    expect((await runFettle(['check', 'example-machine', '--format', 'short'])).stdout).toBe('')
    const json = JSON.parse((await runFettle(['check', 'example-machine', '--format', 'json'])).stdout)
    expect(json).toMatchObject({ machine: 'rcw-400', summary: { errors: 0, warnings: 0 }, findings: [] })
    const sarif = JSON.parse((await runFettle(['check', 'example-machine', '--format', 'sarif'])).stdout)
    expect(sarif).toMatchObject({ version: '2.1.0', runs: [{ results: [] }] })
  })

  test('one unit alone', async () => {
    const ran = await runFettle(['check', 'example-machine', '--serial', '0400-023'])
    expect(ran.code).toBe(0)
    expect(ran.stdout).toMatch(/ 119 devices/)
  })

  test('a folder with errors ends with exit code 1', async () => {
    const ran = await runFettle(['check', 'tests/fixtures/load'])
    expect(ran.code).toBe(1)
    expect(ran.stdout).toContain('tests/fixtures/load/machine.yaml:1:1: error: the folder ')
  })
})

test('a reader that closes the pipe early is no fault', async () => {
  const child = startFettle(['explain'])
  let errors = ''
  child.stderr?.on('data', (text) => {
    errors += text
  })
  child.stdout?.once('data', () => child.stdout?.destroy())
  await new Promise((ended) => child.once('close', ended))
  expect(errors).toBe('')
})
