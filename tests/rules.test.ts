import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { rules } from '../src/check/rules.ts'
import { everyRule } from '../src/cli/every-rule.ts'
import { framesOf } from '../src/report/frame.ts'
import { reportFinding } from '../src/report/text.ts'
import { readCases, withFindings } from './cases.ts'
import { type Changes, judgeLoaded, loadSoundWithPdfs } from './sound-machine.ts'

const broken = 'tests/fixtures/broken'
const pages = readdirSync(broken)
  .filter((name) => name.endsWith('.md'))
  .map((name) => name.slice(0, -3))
  .sort()

/** The whole report of the sound machine with some files changed. */
async function report(files: Changes, active = rules): Promise<string> {
  const loaded = await loadSoundWithPdfs(files)
  const frameOf = framesOf(loaded.texts)
  return judgeLoaded(loaded, active)
    .findings.map((finding) => reportFinding(finding, frameOf))
    .join('\n\n')
}

test('the sound machine has no finding', async () => {
  expect(await report(new Map())).toBe('')
})

test('every rule has its page, and every page its rule', () => {
  const ids = everyRule.map(({ id }) => id)
  expect(new Set(ids).size).toBe(ids.length)
  expect(pages).toEqual([...ids].filter((id) => !onDiskOnly.includes(id)).sort())
})

/** What only a real disk or a real file shows; see tests/load. */
const onDiskOnly = [
  'unreadable-file',
  'not-text',
  'windows-1252',
  'file-too-large',
  'unreadable-workbook',
  'unknown-worksheet',
  'error-cell',
  'formula-without-value',
  'merged-cells',
  'long-number',
  'hidden-cells',
]

describe.each(pages)('%s', (id) => {
  const file = `${broken}/${id}.md`
  const page = readFileSync(file, 'utf8')
  const cases = readCases(page)

  test('has a case in which it is found, and no two cases of one name', () => {
    expect(new Set(cases.map(({ name }) => name)).size).toBe(cases.length)
    expect(cases.length).toBeGreaterThan(0)
    expect(cases.some(({ expected }) => expected.value.includes(`[${id}]`))).toBe(true)
  })

  test.each(cases.map((it) => [it.name, it] as const))('%s', async (_, { name, files, expected }) => {
    const actual = await report(files)
    if (process.env.UPDATE) {
      const now = readFileSync(file, 'utf8')
      const block = readCases(now).find((it) => it.name === name)?.expected
      if (block) writeFileSync(file, withFindings(now, block, actual))
      return
    }
    expect(actual).toBe(expected.value)
  })

  test('messages are one line each and stand alone, and every place lies in its file', async () => {
    for (const { files } of cases) {
      const loaded = await loadSoundWithPdfs(files)
      for (const { message, note, help, place, related = [] } of judgeLoaded(loaded).findings) {
        expect(message).toMatch(/^[a-z0-9`<][^\n]*[^.\s]$/)
        for (const text of [note, help, ...related.map(({ label }) => label)]) if (text !== undefined) expect(text).toMatch(/^[^\n]*[^.\s]$/)
        for (const { file, line, column, endLine, endColumn } of [place, ...related.map((it) => it.place)]) {
          expect(endLine > line || (endLine === line && endColumn >= column)).toBe(true)
          // Sheets and files that cannot be read have no text to compare with.
          const lines = loaded.texts.get(file)?.split('\n')
          if (!lines) continue
          expect([file, line, lines.length >= line]).toEqual([file, line, true])
          expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1)
        }
      }
    }
  })

  if (!rules.some((rule) => rule.id === id)) return
  test('without the rule its cases fail', async () => {
    const others = rules.filter((rule) => rule.id !== id)
    const firing = cases.filter(({ expected }) => expected.value.includes(`[${id}]`))
    for (const { files, expected } of firing) expect(await report(files, others)).not.toBe(expected.value)
  })
})
