import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Sizes in a PDF are rounded. */
const roundingPt = 0.1

/** Whether some letters of a PDF have this size in points. It reads no further than to the first of them. */
export async function hasLettersOf(bytes: Uint8Array, sizePt: number): Promise<boolean> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 })
  const pdf = await task.promise
  try {
    for (let number = 1; number <= pdf.numPages; number++) {
      const page = await pdf.getPage(number)
      const { items } = await page.getTextContent()
      page.cleanup()
      if (items.some((item) => 'str' in item && item.str.trim() !== '' && Math.abs(item.height - sizePt) < roundingPt)) return true
    }
    return false
  } finally {
    await task.destroy()
  }
}
