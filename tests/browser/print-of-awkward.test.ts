import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { runFettle } from '../cli/run-fettle.ts'
import { type PrintedPages, printedLinks } from './printed-links.ts'

// What makes a part of a book too wide, too high or too long. Chromium then prints the letters of the whole book smaller, or loses rows.

const unbroken = 'Q'.repeat(140)
const columns = Array.from({ length: 14 }, (_, index) => `Column${index + 1}`)
const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
const table = (heads: readonly string[], rows: readonly (readonly string[])[]) =>
  [row(heads), row(heads.map(() => '---')), ...rows.map(row)].join('\n')
const rows = Array.from({ length: 300 }, (_, index) => [`Row${index + 1}.`, `Value ${index + 1}`])
const page = `---
title: Intended use of ${unbroken}
---
## What it is for

The press holds a crate. See <Tag id="PS-101" /> and <Drawing number="E-1" sheet="2" tag="PS-102" />.

A name without a place to break: ${unbroken}.

- In a list: ${unbroken}

### ${unbroken}

### A heading that is longer than one line of the book has room for, and then goes on for so long that it needs three lines of it, whatever the paper is

${table(columns, [columns.map((_, index) => `Cell${index + 1} with words`), columns.map(() => unbroken.slice(0, 30))])}

${table(['First', 'Second'], rows)}
`

let folder: string
let printed: PrintedPages

async function print(...options: string[]): Promise<PrintedPages> {
  const out = join(folder, 'book.pdf')
  const { code, stdout, stderr } = await runFettle(['print', join(folder, 'machine'), '--shared', join(folder, 'content'), '--out', out, ...options])
  if (code !== 0) throw new Error(`${stdout}${stderr}`)
  return printedLinks(readFileSync(out))
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-'))
  cpSync('tests/fixtures/sound-machine', join(folder, 'machine'), { recursive: true })
  mkdirSync(join(folder, 'content'))
  writeFileSync(join(folder, 'machine/pages/front/use.mdx'), page)
  printed = await print('--paper', 'letter')
}, 300_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test('the letters keep their size', () => {
  const contents = printed.places.get('contents') ?? 0
  expect(printed.largestPt[contents - 1]).toBeCloseTo(18)
})

test('every cell of a wide table and every letter of a long word is on the paper', () => {
  const all = printed.texts.join(' ').replace(/\s+/g, '')
  for (let cell = 1; cell <= columns.length; cell++) expect(all).toContain(`Cell${cell}withwords`)
  expect(all).toContain(unbroken)
})

test('a table of 300 rows has its head on each of its pages, and each row once', () => {
  const pages = printed.texts.filter((text) => /Row\d+\./.test(text))
  expect(pages.length).toBeGreaterThan(4)
  expect(pages.filter((text) => !/First +Second/.test(text))).toEqual([])
  const found = printed.texts.flatMap((text) => text.match(/Row\d+\./g) ?? [])
  expect(found).toEqual(rows.map(([name]) => name))
})

// Source: ISO 216:2007, and ANSI/ASME Y14.1-2020, size B of 11 by 17 in.
test.each([
  ['a4', [1191, 842], [595, 842]],
  ['letter', [1224, 792], [612, 792]],
] as const)(
  'drawings to be folded lie one to a sheet of twice the size of %s, in letters that are larger for it, and the rest stays',
  async (paper, folded, own) => {
    const book = await print('--paper', paper, '--drawings', 'folded')
    const sheets = book.sizePt.flatMap((size, index) => (size[0] === folded[0] && size[1] === folded[1] ? [book.texts[index] ?? ''] : []))
    expect(sheets.map((text) => /Sheet \d of \d/i.exec(text)?.[0])).toEqual(['Sheet 1 of 2', 'Sheet 2 of 2', 'Sheet 1 of 1'])
    expect(new Set(book.sizePt.filter(([width]) => width !== folded[0]).map(String))).toEqual(new Set([String(own)]))
    expect(book.largestPt[(book.places.get('contents') ?? 0) - 1]).toBeCloseTo(18)
    const largestDrawn = ({ sizePt, largestPt }: PrintedPages) => Math.max(...largestPt.filter((_, index) => sizePt[index]?.[0] !== own[0]))
    if (paper === 'letter') expect(largestDrawn(book) / largestDrawn(printed)).toBeGreaterThan(1.3)
  },
  300_000,
)
