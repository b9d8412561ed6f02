import { Worker } from 'node:worker_threads'
import type { PdfAnswer, PdfRequest } from './pdf-worker.ts'
import type { PdfPage } from './read-page.ts'

export type PdfRefusal = 'encrypted' | 'broken' | 'empty' | 'too-many-pages' | 'too-slow'

/** The pages of a PDF with their texts, or why there are none. */
export type PdfText = { pages: readonly (PdfPage | { unreadable: string })[] } | { refused: PdfRefusal; reason: string }

export interface PdfReader {
  read(bytes: Uint8Array): Promise<PdfText>
  close(): Promise<void>
}

export interface PdfLimits {
  /** Longest time for opening a file and for one page, in milliseconds. */
  stepMs: number
  /** How many pages of one file may take too long before the rest is given up. */
  slowPages: number
  pages: number
  memoryMb: number
}

const usualLimits: PdfLimits = { stepMs: 15_000, slowPages: 3, pages: 2000, memoryMb: 1500 }
const workerFile = new URL('./pdf-worker.ts', import.meta.url)

/** Reads PDFs one after the other in a thread that starts with the first of them. Bad content is never a throw. */
export function startPdfReader(limits: PdfLimits = usualLimits, file = workerFile): PdfReader {
  let worker: Worker | undefined
  const stop = async () => {
    await worker?.terminate()
    worker = undefined
  }
  const ask = (bytes: Uint8Array, from: number): AsyncIterable<PdfAnswer | 'too-slow' | 'ended'> => {
    worker ??= new Worker(file, { stderr: true, stdout: true, resourceLimits: { maxOldGenerationSizeMb: limits.memoryMb } })
    return answersOf(worker, { bytes, from }, limits.stepMs)
  }

  const read = async (bytes: Uint8Array): Promise<PdfText> => {
    const pages: (PdfPage | { unreadable: string })[] = []
    let count = 0
    let slow = 0
    do {
      for await (const answer of ask(bytes, pages.length + 1)) {
        if (answer === 'too-slow' || answer === 'ended') {
          await stop()
          const reason = answer === 'ended' ? 'it takes more memory than there is' : `it takes longer than ${limits.stepMs / 1000} s`
          if (count === 0) return { refused: 'too-slow', reason }
          pages.push({ unreadable: reason })
          slow += 1
          break
        }
        if (answer.kind === 'refused') return { refused: answer.name === 'PasswordException' ? 'encrypted' : 'broken', reason: answer.reason }
        if (answer.kind === 'page') pages.push(answer.page)
        else if (answer.pages === 0) return { refused: 'empty', reason: '' }
        else if (answer.pages > limits.pages) {
          await stop()
          return { refused: 'too-many-pages', reason: `it has ${answer.pages} pages; up to ${limits.pages} are read` }
        } else count = answer.pages
        if (count > 0 && pages.length === count) break
      }
    } while (pages.length < count && slow < limits.slowPages)
    while (pages.length < count) pages.push({ unreadable: 'the pages before it took too long' })
    return { pages }
  }
  return { read, close: stop }
}

/** What the thread answers to one request, until it is too slow or ends. */
async function* answersOf(worker: Worker, request: PdfRequest, stepMs: number): AsyncGenerator<PdfAnswer | 'too-slow' | 'ended'> {
  const waiting: (PdfAnswer | 'ended')[] = []
  let wake = () => {}
  const take = (answer: PdfAnswer | 'ended') => {
    waiting.push(answer)
    wake()
  }
  const end = () => take('ended')
  worker.on('message', take).on('error', end)
  try {
    // A copy: the thread takes the bytes away, and a second request may need them.
    const bytes = new Uint8Array(request.bytes)
    worker.postMessage({ ...request, bytes }, [bytes.buffer])
    while (true) {
      if (waiting.length === 0) {
        const timely = await new Promise<boolean>((done) => {
          const timer = setTimeout(() => done(false), stepMs)
          wake = () => {
            clearTimeout(timer)
            done(true)
          }
        })
        if (!timely) return yield 'too-slow'
      }
      const answer = waiting.shift()
      if (answer === undefined) continue
      yield answer
      if (answer === 'ended') return
    }
  } finally {
    worker.off('message', take).off('error', end)
  }
}
