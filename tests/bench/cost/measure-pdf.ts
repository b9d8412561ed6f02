import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { PDFDocument, StandardFonts } from '@cantoo/pdf-lib'
import { readFiles, textOf } from '../example.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { runCheck } from './run-check.ts'

/** The check of a small machine with one large drawing PDF: first without, then with its texts in the cache. */
export async function measurePdf(sheets: number): Promise<string> {
  const files = new Map([...readFiles('tests/fixtures/sound-machine', 'content')].filter(([path]) => !path.startsWith('content/')))
  const pdf = await drawingSet(sheets)
  files.set('drawings/E-900.pdf', pdf)
  files.set('data/drawings.csv', `${textOf(files, 'data/drawings.csv').trimEnd()}\nE-900,Whole set,schematic,${sheets},A\n`)
  const before = await inTemporaryFolder(withoutSet(files), (dir) => runCheck(dir))
  const [without, cached] = await inTemporaryFolder(files, (dir) => {
    const first = runCheck(dir)
    // With the report of the first check the second would read nothing.
    rmSync(join(dir, '.fettle/check'), { recursive: true })
    return [first, runCheck(dir)]
  })
  const row = (name: string, run = before) => (run ? `| ${name} | ${run.timeS.toFixed(2)} s | ${run.peakMb.toFixed(0)} MB |` : '')
  return [
    `A drawing of ${sheets} sheets with ${textsOnSheet} texts each, ${(pdf.length / 1e6).toFixed(1)} MB:`,
    '',
    '| check | time | peak memory |',
    '| --- | --: | --: |',
    row('without the drawing', before),
    row('first check of the drawing', without),
    row('second check, texts from the cache', cached),
    '',
  ].join('\n')
}

function withoutSet(files: ReadonlyMap<string, string | Uint8Array>): Map<string, string | Uint8Array> {
  const rest = new Map(files)
  rest.delete('drawings/E-900.pdf')
  rest.set('data/drawings.csv', textOf(files, 'data/drawings.csv').replace(/^E-900.*\n/m, ''))
  return rest
}

const textsOnSheet = 120

/** Sheets of lines and short texts, as a schematic has them: names of devices, terminals and wires. */
async function drawingSet(sheets: number): Promise<Uint8Array> {
  const document = await PDFDocument.create()
  const font = await document.embedFont(StandardFonts.Helvetica)
  for (let sheet = 1; sheet <= sheets; sheet++) {
    const page = document.addPage([1191, 842])
    for (let text = 0; text < textsOnSheet; text++) {
      const [x, y] = [60 + (text % 10) * 110, 60 + Math.floor(text / 10) * 60]
      page.drawLine({ start: { x, y }, end: { x: x + 90, y } })
      page.drawText(text % 3 === 0 ? `X${sheet}:${text}` : `W${sheet * 1000 + text}`, { x, y: y + 6, size: 8, font })
    }
  }
  return document.save()
}
