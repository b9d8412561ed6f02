import { parentPort } from 'node:worker_threads'
import type { PdfAnswer, PdfRequest } from '../../../src/load/pdf/pdf-worker.ts'

const send = (answer: PdfAnswer) => parentPort?.postMessage(answer)
const turnForEver = () => {
  for (;;);
}

// Stands for pdfjs with a file of four pages. The pages that its bytes count never end; page 0 is the opening.
parentPort?.on('message', ({ bytes, from }: PdfRequest) => {
  if (bytes.includes(0)) turnForEver()
  send({ kind: 'opened', pages: 4 })
  for (let number = from; number <= 4; number++) {
    if (bytes.includes(number)) turnForEver()
    const text = { text: `page ${number}`, x: 0, y: 0, fontSize: 1, angleDeg: 0 }
    send({ kind: 'page', number, page: { width: 1, height: 1, texts: [text] } })
  }
})
