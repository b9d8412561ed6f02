import { degrees, PDFDocument, type PDFFont, type PDFPage, StandardFonts } from '@cantoo/pdf-lib'

export type Draw = (page: PDFPage, font: PDFFont, document: PDFDocument) => void | Promise<void>

/** A PDF made with pdf-lib: one page for each function that draws on it, 420 by 297 points. */
export async function madePdf(...draw: readonly Draw[]): Promise<Uint8Array> {
  const document = await PDFDocument.create()
  const font = await document.embedFont(StandardFonts.Helvetica)
  for (const on of draw) await on(document.addPage([420, 297]), font, document)
  return document.save()
}

/** Draws a text in 10 points with its baseline at x, y from the bottom left; the angle counts against the clock. */
export function drawText(page: PDFPage, font: PDFFont, text: string, x: number, y: number, angleDeg = 0): void {
  page.drawText(text, { x, y, size: 10, font, rotate: degrees(angleDeg) })
}
