import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { runFettle } from '../cli/run-fettle.ts'
import { type Letters, printedLetters } from './printed-letters.ts'

// Words that run from right to left beside tags, and long compounds of a language for which the browser may have no hyphens.

const compounds = [
  'Druckluftbehälterabsperrventilbetätigungsgestänge',
  'Fördergurtgeschwindigkeitsüberwachungseinrichtung',
  'Sicherheitsdruckbegrenzungsventilprüfvorschriftenverordnung',
]
const softly = 'Mehrweg\u00adtransport\u00adbehälter\u00adwasch\u00adanlagen\u00adsteuerungs\u00adschrank'
const narrow = Array.from({ length: 6 }, () => compounds[0])
const row = (cells: readonly (string | undefined)[]) => `| ${cells.join(' | ')} |`

const quotes = `---
title: Intended use
---
## What it is for

The plate says «אין לפתוח לפני <Tag id="PS-101" /> סגור» and nothing else.

לפני פתיחת המכבש, נעל את <Tag id="PS-101" /> ואת <Tag id="PS-102" /> בלחץ של 6 bar.

قبل فتح المكبس، أغلق <Tag id="PS-101" /> ثم <Tag id="PS-102" /> عند 6 bar.

<Tag id="PS-102" /> פתוח.

<Steps>
<Step>סגור את <Tag id="PS-101" /> בלחץ של 6 bar.</Step>
</Steps>
`
const german = `---
title: ${compounds[2]}
---
## ${compounds.join(' und ')}

Die ${compounds.join(' und die ')} stehen an <Tag id="PS-101" />. Der ${softly} ist der ${softly} am ${softly}.

${[row(narrow), row(narrow.map(() => '---')), row(narrow)].join('\n')}
`

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-'))
  cpSync('tests/fixtures/sound-machine', join(folder, 'machine'), { recursive: true })
  mkdirSync(join(folder, 'content/front'), { recursive: true })
  writeFileSync(join(folder, 'content/content.yaml'), 'language: de\n')
  writeFileSync(join(folder, 'content/front/rule.mdx'), german)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function print(use: string) {
  writeFileSync(join(folder, 'machine/pages/front/use.mdx'), use)
  return runFettle(['print', join(folder, 'machine'), '--shared', join(folder, 'content'), '--out', join(folder, 'book.pdf')])
}

/** The lines of a page as one reads them from right to left. The forms in which Arabic letters are joined are the letters that they are. */
function linesFromTheRight(letters: readonly Letters[]): string[] {
  const lines = new Map<number, Letters[]>()
  for (const it of letters) {
    const at = [...lines.keys()].find((y) => Math.abs(y - it.y) < 3) ?? it.y
    lines.set(at, [...(lines.get(at) ?? []), it])
  }
  return [...lines.values()].map((line) =>
    line
      .sort((a, b) => b.x - a.x)
      .map(({ text }) => text.normalize('NFKC'))
      .join(' '),
  )
}

const packed = (text: string) => text.replace(/[\s\u00ad]+/g, '')

test('a book keeps words from right to left in their order, tags and numbers among them, and every letter of a long compound', async () => {
  const { code, stdout, stderr } = await print(quotes)
  if (code !== 0) {
    // Our fonts have no Hebrew and no Arabic. A computer without a font of them prints no boxes in their place.
    expect(`${stdout}${stderr}`).toMatch(/page \d+: no font of this computer has one of its characters/)
    return
  }
  const pages = await printedLetters(readFileSync(join(folder, 'book.pdf')))
  const quoted = pages.find((letters) => letters.some(({ text }) => text.includes('The plate says'))) ?? []
  const lines = linesFromTheRight(quoted).map(packed)
  const read = (line: string) => expect(lines).toContainEqual(expect.stringContaining(packed(line)))
  read('לפני פתיחת המכבש, נעל את PS-101 ואת PS-102 בלחץ של .bar 6')
  read('قبل فتح المكبس، أغلق PS-101 ثم PS-102 عند .bar 6')
  read('סגור את PS-101 בלחץ של .bar 6')
  read('אין לפתוח לפני PS-101 סגור')
  // The tag is first, and no word of the sentence: it begins at the right all the same.
  read('PS-102 פתוח')
  expect(quoted.filter(({ text }) => /\p{Script=Hebrew}/u.test(text)).map(({ pt }) => pt)).toContain(10)
  expect(new Set(quoted.filter(({ text }) => /\p{Script=Arabic}|\p{Script=Hebrew}/u.test(text)).map(({ pt }) => pt))).toEqual(new Set([10]))

  const rule = pages.flatMap((letters) => letters.map(({ text }) => text)).join('')
  for (const compound of compounds) expect(packed(rule).split(compound).length - 1).toBeGreaterThan(2)
  expect(packed(rule).split(compounds[0] ?? '').length - 1).toBeGreaterThan(2 * narrow.length)
}, 300_000)

test('a character of no font is reported with its page', async () => {
  // Not a character, and so in no font.
  const { code, stderr, stdout } = await print(quotes.replace('and nothing else', 'and \u{10ffff}'))
  expect(code).toBe(2)
  expect(`${stdout}${stderr}`).toMatch(/the PDF is not whole:\npage \d+: no font of this computer has one of its characters/)
}, 300_000)

test('a machine in a language of which the site has no words is refused, and the refusal says what is missing', async () => {
  const file = join(folder, 'machine/machine.yaml')
  const before = readFileSync(file, 'utf8')
  writeFileSync(file, before.replace(/^languages: .*$/m, 'languages: { source: de }').replace(/^name: .*$/m, 'name: Presse'))
  rmSync(join(folder, 'machine/pages/front/care.es.mdx'))
  const { code, stderr } = await print(quotes)
  expect(code).toBe(2)
  expect(stderr).toContain('not printed: the site has no labels for de; a language is one file in src/site/words/')
}, 300_000)
