import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { memoryFolder } from '../../../src/load/folder.ts'
import { extraction, readDrawingTexts } from '../../../src/load/pdf/drawing-texts.ts'
import { textCache } from '../../../src/load/pdf/text-cache.ts'
import { drawText, madePdf } from './made-pdf.ts'

const pdf = await madePdf((page, font) => drawText(page, font, 'PRS104', 30, 100))
const folder = memoryFolder(
  new Map<string, string | Uint8Array>([
    ['drawings/E-1.pdf', pdf],
    ['drawings/E-2.svg', '<svg/>'],
  ]),
)
const asRead = [
  ['drawings/E-1.pdf', { pages: [{ width: 420, height: 297, texts: [{ text: 'PRS104', x: 48.62, y: 193.5, fontSize: 10, angleDeg: 0 }] }] }],
]

/** Reads with an empty cache, spoils what it kept, and reads again. */
async function readTwice(spoil: (file: string) => void): Promise<unknown> {
  const dir = mkdtempSync(join(tmpdir(), 'drawing-text-'))
  try {
    await readDrawingTexts(folder, textCache(dir))
    const [name] = readdirSync(dir)
    if (name === undefined) throw new Error('nothing was kept')
    spoil(join(dir, name))
    return [...(await readDrawingTexts(folder, textCache(dir)))]
  } finally {
    rmSync(dir, { recursive: true, force: true })
  }
}

describe('the cache of drawing texts', () => {
  test('is asked before the PDF is read', async () => {
    const kept = await readTwice((file) => writeFileSync(file, readFileSync(file, 'utf8').replace('PRS104', 'KEPT1')))
    expect(kept).toMatchObject([['drawings/E-1.pdf', { pages: [{ texts: [{ text: 'KEPT1' }] }] }]])
  })

  test.each([
    ['cut short', '{"pages":[{"wid'],
    ['of another shape', '{"pages":[{"width":1,"height":1,"texts":[{"text":5}]}]}'],
    ['no JSON', 'rubbish'],
  ])('is passed over where it is %s', async (_, content) => {
    expect(await readTwice((file) => writeFileSync(file, content))).toEqual(asRead)
  })

  test('that cannot be written does no harm', async () => {
    expect([...(await readDrawingTexts(folder, textCache('/dev/null/drawing-text')))]).toEqual(asRead)
  })

  test('knows the release of pdfjs by which it was filled', () => {
    const { version } = JSON.parse(readFileSync('node_modules/pdfjs-dist/package.json', 'utf8'))
    expect(extraction).toMatch(new RegExp(`^pdfjs-${version.replaceAll('.', '\\.')}\\.\\d+$`))
  })
})

test('a folder without PDFs needs no reader', async () => {
  expect([...(await readDrawingTexts(memoryFolder(new Map([['drawings/E-1.svg', '']]))))]).toEqual([])
})
