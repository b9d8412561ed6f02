import { strFromU8, unzipSync } from 'fflate'
import { readDrawingTexts } from '../../../src/load/pdf/drawing-texts.ts'
import type { PdfText } from '../../../src/load/pdf/pdf-reader.ts'
import { reportJson } from '../../../src/report/json.ts'
import { reportShort } from '../../../src/report/short.ts'
import { reportText } from '../../../src/report/text.ts'
import { cellPosition } from '../../../src/source/cell.ts'
import type { Finding } from '../../../src/source/finding.ts'
import type { Place } from '../../../src/source/place.ts'
import { judgeLoaded } from '../../sound-machine.ts'
import { foldersOf, loadFiles } from '../example.ts'
import { decodeForPlaces } from './decode-for-places.ts'
import type { Input } from './inputs.ts'

export interface Outcome {
  index: number
  what: string
  timeMs: number
  /** What must not be: a crash, or a finding that is not as it should be. */
  faults: readonly string[]
  findings: number
}

/** Makes what checks an input and everything that its findings must hold to. A drawing PDF is read once. */
export function inputTrier(): (input: Input) => Promise<Outcome> {
  const pdfTexts = new Map<string, PdfText>()
  const cache = { get: (key: string) => pdfTexts.get(key), set: (key: string, text: PdfText) => void pdfTexts.set(key, text) }
  return async ({ index, what, files }) => {
    let start = performance.now()
    try {
      const drawingTexts = await readDrawingTexts(foldersOf(files).machine, cache)
      start = performance.now()
      const loaded = loadFiles(files, drawingTexts)
      const { findings, accepted } = judgeLoaded(loaded)
      const timeMs = performance.now() - start
      const { texts } = loaded
      const counts = { errors: 0, warnings: 0, notes: 0, pages: 0, devices: 0, alarms: 0, parts: 0, drawings: 0 }
      reportText(findings, texts, counts)
      JSON.parse(reportJson(findings, undefined, counts))
      const short = reportShort(findings).split('\n').length - 1
      const isPage: IsPage = (path, line) => line >= 1 && line <= pagesOf(drawingTexts.get(path))
      const faults = [...findings, ...accepted.map(({ finding }) => finding)].flatMap((finding) => faultsOf(finding, files, isPage))
      if (findings.length > 0 && short !== findings.length) faults.push(`the short report has ${short} lines for ${findings.length} findings`)
      return { index, what, timeMs, faults, findings: findings.length }
    } catch (error) {
      const stack = error instanceof Error ? (error.stack ?? error.message) : String(error)
      return { index, what, timeMs: performance.now() - start, faults: [`crash: ${stack.split('\n').slice(0, 4).join(' ')}`], findings: 0 }
    }
  }
}

/** Whether a drawing PDF has a page, which stands as a line in a place. */
type IsPage = (path: string, page: number) => boolean

const pagesOf = (text: PdfText | undefined) => (text && 'pages' in text ? text.pages.length : 1)

function faultsOf({ rule, message, note, help, place, related = [] }: Finding, files: Input['files'], isPage: IsPage): string[] {
  const faults = [place, ...related.map((it) => it.place)].flatMap((it) => placeFault(it, files, isPage))
  if (message.trim() === '') faults.push('a message is empty')
  // In backticks stands what the author wrote.
  for (const text of [message, note, help, ...related.map(({ label }) => label)]) {
    const [word] = /\bundefined\b|\[object |\bNaN\b/.exec(text ?? '') ?? []
    if (word !== undefined && !isWritten(word, files)) faults.push(`a text speaks of our values: ${text}`)
  }
  return faults.map((fault) => `${rule}: ${fault}`)
}

/** Whether the author wrote it: the finding quotes what stands in a file. */
const isWritten = (word: string, files: Input['files']) =>
  [...files].some(([path, content]) => decodeForPlaces(content).includes(word) || (path.endsWith('.xlsx') && stands(word, content)))

/** Whether a word stands in a part of a workbook. */
function stands(word: string, content: string | Uint8Array): boolean {
  try {
    return Object.values(unzipSync(Buffer.from(content))).some((part) => strFromU8(part).includes(word))
  } catch {
    return false // no zip: nothing of it was read
  }
}

/** A folder as a whole has the place of the file that it lacks. */
function placeFault(place: Place, files: Input['files'], isPage: IsPage): string[] {
  const { file, line, column, endLine, endColumn } = place
  const content = files.get(file)
  const at = `${file}:${place.cell ?? ''}${line}:${column}-${endLine}:${endColumn}`
  if (content === undefined) return line === 1 && column === 1 && file === 'machine.yaml' ? [] : [`there is no file at ${at}`]
  if (endLine < line || (endLine === line && endColumn < column)) return [`${at} ends before it begins`]
  if (place.cell !== undefined) return isCell(place) ? [] : [`${at} is no cell of a workbook`]
  if (/\.pdf$/i.test(file) && column === 1 && isPage(file, line)) return []
  const lines = decodeForPlaces(content).split(/\r\n|\n|\r/)
  const inside = (row: number, col: number) => row >= 1 && row <= lines.length && col >= 1 && col <= (lines[row - 1] ?? '').length + 2
  return inside(line, column) && inside(endLine, endColumn) ? [] : [`${at} is outside its file of ${lines.length} lines`]
}

/** Whether a place in a workbook has the name of its cell, within the 1,048,576 rows and 16,384 columns of a sheet. */
function isCell({ file, cell = '', line, column }: Place): boolean {
  const position = cellPosition(cell.slice(cell.lastIndexOf('!') + 1))
  return /\.(?:xls\w?|ods)$/i.test(file) && position?.row === line && position.column === column && line <= 1_048_576 && column <= 16_384
}
