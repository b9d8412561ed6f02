import { hash } from 'node:crypto'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Drawing, Machine } from '../model/machine.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import { drawingTextsFile, drawingTextsScript } from './drawing-texts.ts'
import { sheetFile, smallSheetFile } from './parts/plan.ts'
import type { DrawnSheet, PdfSheet } from './pdf-sheets.ts'

/** Writes `sheets/`: every sheet that can be read as an SVG, of a page of a PDF a small picture too, and the texts of the drawings. */
export async function writeSheets({ drawings }: Machine, siteDir: string, kept: KeptFiles | undefined): Promise<void> {
  mkdirSync(join(siteDir, 'sheets'), { recursive: true })
  for (const drawing of drawings) {
    const { number, sheetList } = drawing
    writeFileSync(join(siteDir, drawingTextsFile(number.value)), drawingTextsScript(drawing))
    for (const sheet of sheetList) if (sheet.readable && !sheet.pdf) writeFileSync(join(siteDir, sheetFile(number.value, sheet.number)), sheet.svg())
    await writePdfSheets(drawing, siteDir, kept)
  }
}

/** It takes half a second and more to draw a page of a PDF, so each is kept. */
async function writePdfSheets({ number, sheetList }: Drawing, siteDir: string, kept: KeptFiles | undefined): Promise<void> {
  const bytes = sheetList.find(({ pdf }) => pdf)?.pdf?.bytes()
  if (!bytes) return
  const pdf = hash('sha256', bytes)
  const toDraw = sheetList.flatMap((sheet): PdfSheet[] => {
    if (!sheet.pdf) return []
    const { page } = sheet.pdf
    const of = ['sheet', pdf, String(page)]
    const write = ({ svg, small }: DrawnSheet) => {
      writeFileSync(join(siteDir, sheetFile(number.value, sheet.number)), svg)
      writeFileSync(join(siteDir, smallSheetFile(number.value, sheet.number)), small, 'base64')
    }
    const known = kept?.get(of)
    if (known) {
      // The store gives back what was kept, or nothing.
      write(JSON.parse(new TextDecoder().decode(known)) as DrawnSheet)
      return []
    }
    const take = (drawn: DrawnSheet) => {
      kept?.set(of, Buffer.from(JSON.stringify(drawn)))
      write(drawn)
    }
    return [{ page, take }]
  })
  if (toDraw.length === 0) return
  const { drawPdfSheets } = await import('./pdf-sheets.ts')
  await drawPdfSheets(bytes, toDraw)
}
