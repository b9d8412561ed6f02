import { createCanvas } from '@napi-rs/canvas'
import jsqr from 'jsqr'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

// jsQR imports as a namespace in Node and as a function elsewhere.
const read = (typeof jsqr === 'function' ? jsqr : (jsqr as { default: typeof import('jsqr').default }).default) as typeof import('jsqr').default

/** What a camera reads in the QR code of the first page of a PDF; undefined where it finds none. */
export async function printedQr(bytes: Uint8Array): Promise<string | undefined> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const page = await pdf.getPage(1)
  const viewport = page.getViewport({ scale: 3 })
  const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height))
  // The canvas of Node takes the place of that of a browser, which the types of pdfjs name.
  await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport, background: '#fff' }).promise
  await pdf.loadingTask.destroy()
  const { data, width, height } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height)
  return read(new Uint8ClampedArray(data), width, height)?.data
}
