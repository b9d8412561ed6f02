import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

// A machine that lacks most of what can be printed, and says so in place of an empty PDF.

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-'))
  mkdirSync(join(folder, 'content'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function print(what: string, language: string) {
  const out = join(folder, `${what}-${language}`)
  const machine = 'tests/fixtures/machines/dosing-skid'
  return runFettle(['print', machine, '--shared', join(folder, 'content'), '--what', what, '--language', language, '--out', out])
}

test.each([
  ['safety', 'no chapter of the manual is about safety: name one as `residualRisks` or `protectiveEquipment`'],
  ['lesson', 'the machine has no lesson, neither of its own nor a shared one'],
  ['parts', 'the machine has no part: its list is `parts` under `data`'],
  ['set-up', 'the machine has no product to be set up for: their list is `formats` under `data`'],
  ['checkout', 'nothing is computed that could be measured at a device'],
  ['sign-off', 'no role of training.yaml is asked to take a lesson'],
])('nothing is written of %s, and why is said', async (what, reason) => {
  const { code, stderr } = await print(what, 'en')
  expect(stderr).toContain(`not printed: ${reason}`)
  expect(code).toBe(2)
  expect(readdirSync(folder)).toEqual(['content'])
})

test.each(['en', 'es'])(
  'what it has is printed in %s',
  async (language) => {
    for (const [what, name] of [
      ['lockout', 'lockout-lo-1.pdf'],
      ['alarms', 'alarms-A01.pdf'],
    ] as const) {
      expect(await print(what, language)).toMatchObject({ code: 0 })
      expect(readdirSync(join(folder, `${what}-${language}`))).toEqual([name])
    }
  },
  300_000,
)
