// Runs in a thread of its own: what makes pdfjs hang or run out of memory ends the thread and not the check.
import { parentPort } from 'node:worker_threads'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { type PdfPage, readPage } from './read-page.ts'

/** Asks for the pages of a PDF from one page on, counted from 1. */
export interface PdfRequest {
  bytes: Uint8Array
  from: number
}

export type PdfAnswer =
  | { kind: 'opened'; pages: number }
  | { kind: 'refused'; name: string; reason: string }
  | { kind: 'page'; number: number; page: PdfPage | { unreadable: string } }

const send = (answer: PdfAnswer) => parentPort?.postMessage(answer)
const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error))

parentPort?.on('message', async ({ bytes, from }: PdfRequest) => {
  try {
    const task = getDocument({ data: bytes, verbosity: 0, useSystemFonts: false })
    const document = await task.promise
    send({ kind: 'opened', pages: document.numPages })
    for (let number = from; number <= document.numPages; number++) {
      try {
        const page = await document.getPage(number)
        send({ kind: 'page', number, page: await readPage(page) })
        page.cleanup()
      } catch (error) {
        send({ kind: 'page', number, page: { unreadable: reasonOf(error) } })
      }
    }
    await task.destroy()
  } catch (error) {
    send({ kind: 'refused', name: error instanceof Error ? error.name : '', reason: reasonOf(error) })
  }
})
