import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** The pages of a PDF of Chromium that print a character which no font on the computer has: the font's first glyph stands for it. */
export async function pagesWithMissingGlyphs(bytes: Uint8Array): Promise<number[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 })
  const pdf = await task.promise
  const pages: number[] = []
  try {
    for (let number = 1; number <= pdf.numPages; number++) {
      const page = await pdf.getPage(number)
      const { fnArray, argsArray } = await page.getOperatorList()
      if (fnArray.some((operator, index) => operator === OPS.showText && hasMissing(argsArray[index]))) pages.push(number)
      page.cleanup()
    }
  } finally {
    await task.destroy()
  }
  return pages
}

/** Of a text that is shown, pdfjs gives its glyphs, with spaces between them as numbers. Chromium maps the glyph for what is missing to U+0000. */
function hasMissing(shown: unknown): boolean {
  const [glyphs] = Array.isArray(shown) ? shown : []
  return (
    Array.isArray(glyphs) &&
    glyphs.some((glyph: unknown) => typeof glyph === 'object' && glyph !== null && 'unicode' in glyph && glyph.unicode === '\u0000')
  )
}
