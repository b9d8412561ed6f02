import { PDFDocument, StandardFonts } from '@cantoo/pdf-lib'

/** As many symbols as a crowded sheet of a cabinet has. */
const [columns, rows] = [40, 30]
const symbols = Array.from({ length: columns * rows }, (_, index) => ({ index, column: index % columns, row: Math.floor(index / columns) }))

/** An SVG sheet of 2000 × 1400 units with 6,000 elements, 1,200 of them texts. */
export function largeSvg(): string {
  const drawn = symbols.map(({ index, column, row }) => {
    const [x, y] = [30 + column * 48, 40 + row * 44]
    return `<path d="M${x} ${y}h20v16h-20z"/><path d="M${x + 20} ${y + 8}h26M${x + 10} ${y + 16}v26"/><circle cx="${x + 10}" cy="${y + 8}" r="4"/><rect x="${x + 28}" y="${y + 3}" width="10" height="10"/><text x="${x + 2}" y="${y - 3}" fill="currentColor" stroke="none">W${1000 + index}</text>`
  })
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2000 1400" font-family="monospace" font-size="11" fill="none" stroke="currentColor">${drawn.join('')}</svg>`
}

/** The same as a page of a PDF, which the site shows as a picture of 2400 px. */
export async function largePdf(): Promise<Uint8Array> {
  const document = await PDFDocument.create()
  const font = await document.embedFont(StandardFonts.Helvetica)
  const page = document.addPage([1191, 842])
  for (const { index, column, row } of symbols) {
    const [x, y] = [20 + column * 29, 20 + row * 27]
    page.drawLine({ start: { x, y }, end: { x: x + 24, y } })
    page.drawRectangle({ x, y: y + 2, width: 12, height: 9, borderWidth: 0.6 })
    page.drawText(`W${1000 + index}`, { x, y: y + 13, size: 6, font })
  }
  return document.save()
}
