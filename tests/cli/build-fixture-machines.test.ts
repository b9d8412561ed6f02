import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

const dir = mkdtempSync(join(tmpdir(), 'fettle-'))
afterAll(() => rmSync(dir, { recursive: true, force: true }))

describe('the roll slitter', () => {
  const out = join(dir, 'roll-slitter')
  const page = (path: string) => readFileSync(join(out, path), 'utf8')
  beforeAll(async () => {
    expect(await runFettle(['build', 'tests/fixtures/machines/roll-slitter', '--out', out])).toMatchObject({ code: 0, stdout: '' })
  }, 60_000)

  test('is whole as it was built', async () => expect(await runFettle(['verify', `${out}.zip`])).toMatchObject({ code: 0 }))

  test('has a page for each designation, with what the workbook and the controller say of it', () => {
    const text = page('tags/=A1+U1-BG1.html')
    for (const fact of ['0030101', '%IX0.4', '-X2:5', '0105', '=A1+C1-KF11', 'I_ShaftLocked']) expect(text).toContain(fact)
  })

  test('shows the sheets of the PDFs, and leads to a short designation on them', () => {
    expect(page('drawings/RS-E-0201.html')).toContain('1 of 2')
    const [, mark] = /RS-E-0201\.html#([^"]*QA1)"/.exec(page('components/knife-section.html')) ?? []
    expect(mark).toBeDefined()
    expect(page('drawings/RS-E-0201.html')).toContain(`id="${mark}"`)
  })

  test('every link of the list leads to a page, with the signs of the designation in it', () => {
    const { links }: { links: { kind: string; path: string }[] } = JSON.parse(page('links.json'))
    expect(links.filter(({ kind }) => kind === 'tag')).toHaveLength(27)
    for (const { path } of links) expect(existsSync(join(out, path)), path).toBe(true)
  })
})

describe('the tray dispenser', () => {
  const out = join(dir, 'tray-dispenser')
  const page = (path: string) => readFileSync(join(out, path), 'utf8')
  beforeAll(async () => {
    // One of the shared lessons is not translated yet.
    const shared = join(dir, 'content')
    cpSync('content', shared, { recursive: true })
    rmSync(join(shared, 'lessons/read-a-drawing.es.mdx'))
    const ran = await runFettle(['build', 'tests/fixtures/machines/tray-dispenser', '--shared', shared, '--out', out])
    expect(ran).toMatchObject({ code: 0, stdout: '' })
  }, 60_000)

  test('is in Spanish, with the shared cautions', () => {
    const text = page('lockout/lo-1.html')
    expect(text).toContain('<html lang="es"')
    expect(text).toContain('puede arrancar sin aviso')
    expect(text).not.toContain('can start without warning')
  })

  test('says that a shared lesson is in English', () => {
    const text = page('lessons/read-a-drawing.html')
    expect(text).toMatch(/<p class="untranslated"[^>]*>[^<]*English/)
    expect(text).toMatch(/<h1 lang="en"[^>]*>Read an electrical drawing/)
  })
})

describe('the dosing skid', () => {
  const out = join(dir, 'dosing-skid')
  const page = (path: string) => readFileSync(join(out, path), 'utf8')
  const letters = (path: string) =>
    [...page(path).matchAll(/<dt[^>]*>([^<]*)<\/dt><dd[^>]*>([^<]*)<\/dd>/g)].map(([, letter, word]) => `${letter} ${word}`)
  beforeAll(async () => {
    expect(await runFettle(['build', 'tests/fixtures/machines/dosing-skid', '--out', out])).toMatchObject({ code: 0, stdout: '' })
  }, 60_000)

  test('says what the letters of a loop tag mean, in both languages', () => {
    expect(letters('tags/PDSHH-1204A.html')).toEqual(['P pressure', 'D difference', 'S switch', 'HH high-high', '1204 loop', 'A suffix'])
    expect(letters('es/tags/PDSHH-1204A.html')).toEqual(['P presión', 'D diferencia', 'S interruptor', 'HH muy alto', '1204 lazo', 'A sufijo'])
    expect(letters('es/tags/GT-1206.html')).toEqual(['G holgura', 'T transmisor', '1206 lazo'])
    expect(letters('tags/M-1201.html')).toEqual(['M motor', '1201 loop'])
  })

  test('leads from a reference to the balloon, or to the column of the sheet', () => {
    const text = page('front/use.html')
    for (const mark of ['at-PDSHH-1204A', 'zone-3']) {
      expect(text).toContain(`P-12.html#${mark}"`)
      expect(page('drawings/P-12.html')).toContain(`id="${mark}"`)
    }
  })
})
