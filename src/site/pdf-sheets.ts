import { createRequire } from 'node:module'
import { dirname, join, sep } from 'node:path'
import { createCanvas } from '@napi-rs/canvas'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import sharp from 'sharp'

/** Long enough that the smallest text of an A1 sheet can be read when it is enlarged on a panel. */
const longestSidePx = 2400
/** The picture that a page opens with: as wide as a panel is, and a quarter of the work for its processor. */
const smallSidePx = 1200

/** A page of a PDF to be shown as a sheet, from 1, and what takes it when it is drawn. */
export interface PdfSheet {
  page: number
  take(drawn: DrawnSheet): void
}

export interface DrawnSheet {
  svg: string
  /** A WebP in base64. */
  small: string
}

/**
 * Draws pages of a PDF, each as an SVG with the size of the page in points and the picture of the page in it, so
 * that marks and zoom work as on any sheet, and as a small picture. The bytes depend on the PDF alone. Throws what pdfjs throws.
 */
export async function drawPdfSheets(bytes: Uint8Array, sheets: readonly PdfSheet[]): Promise<void> {
  const own = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'))
  const folder = (name: string) => join(own, name) + sep
  const task = getDocument({
    data: new Uint8Array(bytes),
    verbosity: 0,
    // The fonts that every PDF may count on come with pdfjs: those of the computer differ from one to the next.
    useSystemFonts: false,
    standardFontDataUrl: folder('standard_fonts'),
    cMapUrl: folder('cmaps'),
    cMapPacked: true,
    wasmUrl: folder('wasm'),
    iccUrl: folder('iccs'),
  })
  const document = await task.promise
  try {
    for (const { page: number, take } of sheets) {
      const page = await document.getPage(number)
      const { width, height } = page.getViewport({ scale: 1 })
      const viewport = page.getViewport({ scale: longestSidePx / Math.max(width, height) })
      const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height))
      // The canvas of Node takes the place of that of a browser, which the types of pdfjs name.
      await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport, background: '#fff' }).promise
      const raw = { width: canvas.width, height: canvas.height, channels: 4 } as const
      const drawn = sharp(canvas.data(), { raw }).removeAlpha()
      const picture = await drawn.clone().webp({ lossless: true, effort: 2 }).toBuffer()
      const small = await drawn.resize({ width: smallSidePx, height: smallSidePx, fit: 'inside' }).webp({ quality: 90 }).toBuffer()
      page.cleanup()
      take({
        svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><image width="${width}" height="${height}" href="data:image/webp;base64,${picture.toString('base64')}"/></svg>`,
        small: small.toString('base64'),
      })
    }
  } finally {
    await task.destroy()
  }
}
