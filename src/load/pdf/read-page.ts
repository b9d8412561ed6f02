import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { multiply } from '../svg-transform.ts'
import { joinRuns, type PlacedText, type TextRun } from './text-runs.ts'

/** One page of a PDF: its size as it is shown, and its texts, in points. */
export interface PdfPage {
  width: number
  height: number
  texts: readonly PlacedText[]
}

/** Reads the texts of a page, those inside form XObjects and annotations too. Throws what pdfjs throws. */
export async function readPage(page: PDFPageProxy): Promise<PdfPage> {
  const { width, height, transform } = page.getViewport({ scale: 1 })
  const toSheet = matrixOf(transform)
  const { items } = await page.getTextContent()
  const runs = items.flatMap((item): TextRun[] => {
    if (!('str' in item)) return []
    const [a, b, c, d, e, f] = multiply(toSheet, matrixOf(item.transform))
    const scale = Math.hypot(toSheet[0], toSheet[1])
    const angleDeg = (Math.atan2(b, a) * 180) / Math.PI
    return [{ text: item.str, x: e, y: f, length: item.width * scale, fontSize: Math.hypot(c, d), angleDeg }]
  })
  return { width, height, texts: [...joinRuns(runs), ...(await annotationTexts(page, toSheet))] }
}

const shownKinds = new Set(['FreeText', 'Widget'])

interface Annotation {
  subtype?: string
  rect?: number[]
  hidden?: boolean
  textContent?: string[]
  contentsObj?: { str?: string }
  fieldValue?: unknown
}

/** What stands in text boxes and form fields, each line in the middle of its box. */
async function annotationTexts(page: PDFPageProxy, toSheet: ReturnType<typeof matrixOf>): Promise<PlacedText[]> {
  const annotations: Annotation[] = await page.getAnnotations()
  return annotations.flatMap(({ subtype, rect, hidden, textContent, contentsObj, fieldValue }) => {
    const [left, bottom, right, top] = rect ?? []
    if (hidden || !shownKinds.has(subtype ?? '') || left === undefined || bottom === undefined || right === undefined || top === undefined) return []
    const written = textContent ?? (subtype === 'FreeText' ? contentsObj?.str : typeof fieldValue === 'string' ? fieldValue : undefined)
    const lines = (typeof written === 'string' ? written.split(/\r\n|\r|\n/) : (written ?? []))
      .map((line) => line.trim())
      .filter((line) => line !== '')
    const [, , , , x, y] = multiply(toSheet, [1, 0, 0, 1, (left + right) / 2, (bottom + top) / 2])
    const fontSize = Math.min(12, (top - bottom) / Math.max(1, lines.length))
    return lines.map((text, index) => ({ text, x, y: y + (index - (lines.length - 1) / 2) * fontSize, fontSize, angleDeg: 0 }))
  })
}

function matrixOf([a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: readonly number[]) {
  return [a, b, c, d, e, f] as const
}
