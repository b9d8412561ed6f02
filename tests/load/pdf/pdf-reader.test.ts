import { readFileSync } from 'node:fs'
import { degrees, PDFDocument, PDFName, PDFString, setCharacterSpacing } from '@cantoo/pdf-lib'
import { afterAll, describe, expect, test } from 'vitest'
import { type PdfText, startPdfReader } from '../../../src/load/pdf/pdf-reader.ts'
import { type Draw, drawText, madePdf } from './made-pdf.ts'

const reader = startPdfReader()
afterAll(() => reader.close())

function pagesOf(text: PdfText) {
  if ('refused' in text) throw new Error(`${text.refused}: ${text.reason}`)
  return text.pages.map((page) => ('unreadable' in page ? [page.unreadable] : page.texts.map(({ text }) => text)))
}

async function texts(draw: Draw): Promise<readonly string[]> {
  return pagesOf(await reader.read(await madePdf(draw)))[0] ?? []
}

describe('a sheet written by another program', () => {
  // Middle of each word's box by pdftotext -bbox; the letters of PS-102 stand apart in the first file.
  const byPdftotext: Record<string, [string, number, number][]> = {
    'chromium.pdf': [
      ['PS-101', 38.28, 34.38],
      ['PS-102', 55.16, 64.38],
      ['MTR5', 200.12, 64.38],
      ['DISC1', 146.88, 76.35],
    ],
    'libreoffice.pdf': [
      ['PS-101', 38.64, 35.2],
      ['PS-102', 38.64, 65.19],
      ['MTR5', 200.28, 65.19],
      ['DISC1', 147.7, 76.73],
    ],
  }
  test.each(Object.keys(byPdftotext))('%s: every tag where pdftotext finds it', async (name) => {
    const read = await reader.read(readFileSync(`tests/fixtures/drawings/${name}`))
    const page = 'pages' in read ? read.pages[0] : undefined
    const found = page && 'texts' in page ? page.texts : []
    for (const [tag, x, y] of byPdftotext[name] ?? []) {
      const text = found.find(({ text }) => text === tag)
      expect([tag, Math.hypot((text?.x ?? 999) - x, (text?.y ?? 999) - y) < 1]).toEqual([tag, true])
    }
    expect(found.map(({ text }) => text)).toEqual(expect.arrayContaining(['Sheet 1 of 1', 'Rev. A']))
    expect(found.find(({ text }) => text === 'DISC1')?.angleDeg).toBe(-90)
  })
})

describe('one text is found as one', () => {
  test.each([0, 30, 90, 180, 270])('turned by %s degrees', async (angle) => {
    const read = await reader.read(await madePdf((page, font) => drawText(page, font, 'PRS104', 200, 150, angle)))
    const page = 'pages' in read ? read.pages[0] : undefined
    const [text] = page && 'texts' in page ? page.texts : []
    expect(text?.text).toBe('PRS104')
    // 37.24 pt long by the widths of Helvetica, raised by 0.35 of 10 pt; PDF angles count against the clock.
    const turn = (-angle * Math.PI) / 180
    expect(text?.x).toBeCloseTo(200 + 18.62 * Math.cos(turn) + 3.5 * Math.sin(turn), 1)
    expect(text?.y).toBeCloseTo(147 + 18.62 * Math.sin(turn) - 3.5 * Math.cos(turn), 1)
  })

  test('drawn in three runs', async () => {
    const read = await texts((page, font) => {
      let x = 30
      for (const run of ['PR', 'S1', '04']) {
        drawText(page, font, run, x, 100)
        x += font.widthOfTextAtSize(run, 10)
      }
    })
    expect(read).toEqual(['PRS104'])
  })

  test.each([1, 2, 4, 8, 12])('letters %s points apart', async (apart) => {
    const read = await texts((page, font) => {
      page.pushOperators(setCharacterSpacing(apart))
      drawText(page, font, 'PRS104', 30, 100)
    })
    expect(read).toEqual(['PRS104'])
  })

  test('drawn twice to be bold', async () => {
    expect(
      await texts((page, font) => {
        drawText(page, font, 'PRS104', 30, 100)
        drawText(page, font, 'PRS104', 30.3, 100)
      }),
    ).toEqual(['PRS104'])
  })

  test('on a page that is shown turned', async () => {
    const read = await reader.read(
      await madePdf((page, font) => {
        page.setRotation(degrees(90))
        drawText(page, font, 'PRS104', 100, 50, 90)
      }),
    )
    expect(read).toMatchObject({ pages: [{ width: 297, height: 420, texts: [{ text: 'PRS104', angleDeg: 0, x: 68.62, y: 96.5 }] }] })
  })

  test('inside a form', async () => {
    const inner = await PDFDocument.load(await madePdf((page, font) => drawText(page, font, 'PRS104', 30, 100)))
    expect(
      await texts(async (page, _, document) => {
        const [form] = await document.embedPdf(inner)
        if (form) page.drawPage(form, { x: 50, y: 50 })
      }),
    ).toEqual(['PRS104'])
  })

  test('in a text box over the sheet', async () => {
    const read = await texts((page, _, document) => {
      const note = document.context.obj({
        Type: 'Annot',
        Subtype: 'FreeText',
        Rect: [30, 100, 90, 112],
        DA: PDFString.of('/Helv 10 Tf'),
        Contents: PDFString.of('PRS104'),
      })
      page.node.set(PDFName.of('Annots'), document.context.obj([document.context.register(note)]))
    })
    expect(read).toEqual(['PRS104'])
  })
})

describe('two texts stay two', () => {
  test.each([
    [
      'side by side',
      [
        ['PRS104', 30, 100],
        ['PRS105', 75, 100],
      ],
    ],
    [
      'one above the other',
      [
        ['=A1+B1', 30, 110],
        ['-BG3', 30, 98],
      ],
    ],
    [
      'crossing',
      [
        ['PRS104', 30, 100],
        ['PRS105', 50, 90, 90],
      ],
    ],
  ] as [string, [string, number, number, number?][]][])('%s', async (_, written) => {
    const read = await texts((page, font) => {
      for (const [text, x, y, angle] of written) drawText(page, font, text, x, y, angle)
    })
    expect([...read].sort()).toEqual(written.map(([text]) => text).sort())
  })
})

describe('a PDF without texts', () => {
  test.each([
    ['rubbish', new TextEncoder().encode('rubbish'), 'broken'],
    ['nothing', new Uint8Array(), 'broken'],
    [
      'no pages',
      new TextEncoder().encode(
        '%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\ntrailer<</Root 1 0 R>>',
      ),
      'empty',
    ],
  ])('%s', async (_, bytes, refused) => expect(await reader.read(bytes)).toMatchObject({ refused }))

  test('a password', async () => {
    const document = await PDFDocument.load(await madePdf((page, font) => drawText(page, font, 'PRS104', 30, 100)))
    document.encrypt({ userPassword: 'x', ownerPassword: 'y' })
    expect(await reader.read(await document.save())).toMatchObject({ refused: 'encrypted' })
  })

  test('lines alone', async () => {
    expect(await texts((page) => page.drawLine({ start: { x: 1, y: 1 }, end: { x: 99, y: 99 } }))).toEqual([])
  })

  test('the file after it is read', async () => {
    expect(await texts((page, font) => drawText(page, font, 'PRS104', 30, 100))).toEqual(['PRS104'])
  })
})

describe('a page that never ends', () => {
  const limits = { stepMs: 1500, slowPages: 2, pages: 10, memoryMb: 500 }
  const read = async (...endless: number[]) => {
    const reader = startPdfReader(limits, new URL('./stubborn-worker.ts', import.meta.url))
    const text = await reader.read(new Uint8Array(endless))
    await reader.close()
    return text
  }

  test('is left out, and the pages after it are read', async () => {
    expect(pagesOf(await read(2))).toEqual([['page 1'], ['it takes longer than 1.5 s'], ['page 3'], ['page 4']])
  })

  test('more than once ends the file', async () => {
    expect(pagesOf(await read(1, 2))).toEqual([
      ['it takes longer than 1.5 s'],
      ['it takes longer than 1.5 s'],
      ['the pages before it took too long'],
      ['the pages before it took too long'],
    ])
  })

  test('as a file refuses it', async () => {
    expect(await read(0)).toMatchObject({ refused: 'too-slow' })
  })
})
