import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { rules } from '../src/check/rules.ts'
import { checkLoaded } from '../src/check/run.ts'
import { diskFolder, memoryFolder } from '../src/load/folder.ts'
import { loadMachine } from '../src/load/load-machine.ts'
import { loadRules } from '../src/load/load-rules.ts'
import { reportFinding } from '../src/report/text.ts'
import { type Case, readCases, withFindings } from './cases.ts'

const broken = 'tests/fixtures/broken'
const nothing = memoryFolder(new Map())
const sound = readSound()
const pages = readdirSync(broken)
  .filter((name) => name.endsWith('.md'))
  .map((name) => name.slice(0, -3))
  .sort()

function readSound(): Map<string, Uint8Array> {
  const folder = diskFolder('tests/fixtures/sound-machine', '')
  return new Map(folder.list().map((path) => [path, folder.read(path)]))
}

/** The whole report of the sound machine with some files changed. */
function report(files: Case['files'], active = rules): string {
  const overlaid = new Map<string, string | Uint8Array>(sound)
  for (const [path, text] of files) {
    if (text === undefined) overlaid.delete(path)
    else overlaid.set(path, text)
  }
  const loaded = loadMachine(memoryFolder(overlaid), nothing)
  return checkLoaded(loaded, active)
    .map((finding) => reportFinding(finding, loaded.texts))
    .join('\n\n')
}

test('the sound machine has no finding', () => {
  expect(report(new Map())).toBe('')
})

test('every rule has its page, and every page its rule', () => {
  const ids = [...rules, ...Object.values(loadRules)].map(({ id }) => id)
  expect(new Set(ids).size).toBe(ids.length)
  expect(pages).toEqual([...ids].filter((id) => !onDiskOnly.includes(id)).sort())
})

/** What only a real disk or a real file shows; see tests/load. */
const onDiskOnly = ['unreadable-file', 'not-text', 'windows-1252', 'file-too-large']

describe.each(pages)('%s', (id) => {
  const file = `${broken}/${id}.md`
  const page = readFileSync(file, 'utf8')
  const cases = readCases(page)

  test('has a case in which it is found', () => {
    expect(cases.length).toBeGreaterThan(0)
    expect(cases.some(({ expected }) => expected.value.includes(`[${id}]`))).toBe(true)
  })

  test.each(cases.map((it) => [it.name, it] as const))('%s', (_, { name, files, expected }) => {
    const actual = report(files)
    if (process.env.UPDATE) {
      const now = readFileSync(file, 'utf8')
      const block = readCases(now).find((it) => it.name === name)?.expected
      if (block) writeFileSync(file, withFindings(now, block, actual))
      return
    }
    expect(actual).toBe(expected.value)
  })

  if (!rules.some((rule) => rule.id === id)) return
  test('without the rule its cases fail', () => {
    const others = rules.filter((rule) => rule.id !== id)
    const firing = cases.filter(({ expected }) => expected.value.includes(`[${id}]`))
    for (const { files, expected } of firing) expect(report(files, others)).not.toBe(expected.value)
  })
})
