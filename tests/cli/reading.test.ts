import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { ReadingFile } from '../../src/report/reading.ts'
import { runFettle } from './run-fettle.ts'

let dir: string
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'fettle-reading-'))
})
afterAll(() => rmSync(dir, { recursive: true, force: true }))

const reading = (...args: string[]) => runFettle(['reading', ...args])

async function readDraft(name: string, text: string, ...args: string[]) {
  const file = join(dir, name)
  writeFileSync(file, text)
  const { code, stdout } = await reading(file, '--format', 'json', ...args)
  const { files }: { files: ReadingFile[] } = JSON.parse(stdout)
  const [read] = files
  if (!read || files.length > 1) throw new Error(`${files.length} files`)
  return { code, read }
}

describe('a page of a machine', () => {
  test('as JSON: counts, unrounded measures of its language, and the limit of its reader', async () => {
    const { code, stdout } = await reading('example-machine/pages/lockout', '--format', 'json')
    expect(code).toBe(0)
    const { files }: { files: ReadingFile[] } = JSON.parse(stdout)
    expect(files.map(({ file }) => file)).toContain('example-machine/pages/lockout/lo-2.es.mdx')
    expect(files.every(({ file }) => file.startsWith('example-machine/pages/lockout/'))).toBe(true)
    for (const { language, words, sentences, syllables, measures, level } of files) {
      expect(level).toMatchObject(
        language === 'en' ? { measure: 'fleschKincaidGrade', limit: 9 } : { measure: 'szigrisztPazos', limit: 55, tooHard: false },
      )
      // Source: Kincaid and others 1975, RBR 8-75, p. 14; Szigriszt-Pazos 1993. From the counts beside it.
      const [perSentence, perWord] = [words / sentences, Number(syllables) / words]
      const value = language === 'en' ? 0.39 * perSentence + 11.8 * perWord - 15.59 : 206.835 - 62.3 * perWord - perSentence
      expect(level?.value).toBeCloseTo(value, 9)
      expect(Object.keys(measures)).toContain(language === 'en' ? 'forcast' : 'fernandezHuerta')
    }
  })

  test('alone, in one language, as text', async () => {
    const { stdout } = await reading('example-machine/pages/lockout/lo-2.es.mdx')
    expect(stdout).toMatch(
      /^example-machine\/pages\/lockout\/lo-2\.es\.mdx \(es, maintenance\)\n {2}\d+ words, \d+ sentences: .* syllables a word\n {2}Szigriszt/,
    )
    expect((await reading('example-machine', '--language', 'fr')).code).toBe(2)
  })
})

describe('a draft', () => {
  test('without a head: what is hard in it, at its place', async () => {
    const { code, read } = await readDraft('draft.md', 'Turn the handle.\n\nDo not utilize it; it is broken.\n')
    expect(code).toBe(0)
    expect(read).toMatchObject({ language: 'en', reader: 'operator', words: 10, sentences: 2, level: { limit: 8, reliable: false, enforced: false } })
    expect(read.findings).toMatchObject([
      { rule: 'plain-word', line: 3, column: 8, help: 'write `use`' },
      { rule: 'semicolon-in-sentence', line: 3, column: 18 },
    ])
  })

  const hard = Array.from(
    { length: 14 },
    (_, n) => `Parameterization ${n} requires consideration of the natural frequency of the mechanical assembly.`,
  )
  test.each([
    ['operator', true],
    ['engineer', true],
  ])('that is too hard for its reader ends with 1: %s', async (reader, tooHard) => {
    const { code, read } = await readDraft('hard.mdx', `---\nreader: engineer\n---\n${hard.join(' ')}`, '--reader', reader)
    expect(read).toMatchObject({ reader, level: { enforced: true, tooHard } })
    expect(code).toBe(1)
  })

  test('in the language of its name, and in one that was asked for', async () => {
    const text = 'Cierre la válvula. Espere un minuto.'
    expect((await readDraft('a.es.mdx', text)).read).toMatchObject({ language: 'es', level: { measure: 'szigrisztPazos' } })
    expect((await readDraft('a.es.mdx', text, '--language', 'it')).read).toMatchObject({
      language: 'it',
      level: { measure: 'gulpease', limit: null },
    })
  })

  test('that is broken is an error, and one without prose has no level', async () => {
    const { code, read } = await readDraft('broken.mdx', 'Open <Tag id="V1"')
    expect([code, read.level, read.findings.map(({ severity }) => severity)]).toEqual([1, null, ['error']])
    expect((await readDraft('empty.mdx', '# Only a heading\n')).read).toMatchObject({ words: 0, measures: {}, level: null })
  })
})

test('what is not there is said', async () => {
  const { code, stderr } = await reading(join(dir, 'nowhere'))
  expect([code, stderr]).toEqual([2, expect.stringContaining('there is no file or folder')])
})
