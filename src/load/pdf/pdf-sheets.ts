import type { Drawing, Sheet } from '../../model/machine.ts'
import type { Row } from '../../model/schema/tables.ts'
import { type Place, startOfFile } from '../../source/place.ts'
import { absentSheet } from '../absent-sheet.ts'
import { loadRules } from '../load-rules.ts'
import type { SheetFiles } from '../sheets.ts'
import { largestPdfBytes } from './drawing-texts.ts'
import type { PdfRefusal } from './pdf-reader.ts'
import type { PdfPage } from './read-page.ts'

const refusals: Readonly<Record<PdfRefusal, { message: string; help: string }>> = {
  encrypted: { message: 'the PDF opens only with a password', help: 'export it again without a password' },
  broken: { message: 'the file is not a valid PDF', help: 'export it again' },
  empty: { message: 'the PDF has no pages', help: 'export the drawing again' },
  'too-many-pages': { message: 'the PDF has too many pages', help: 'give each drawing a file of its own' },
  'too-slow': { message: 'the PDF cannot be read in a bounded time', help: 'export it again, with fewer lines or as one file a drawing' },
}

/** The pages of a PDF as the sheets of a drawing: page 1 is sheet 1. What cannot be read is a finding. */
export function loadPdfSheets(
  row: Pick<Row<'drawings'>, 'number' | 'sheets'>,
  { path, count }: { path: string; count: number },
  { machine, drawingTexts, sink }: SheetFiles,
): Pick<Drawing, 'sheetList' | 'surplus'> {
  const file = machine.label + path
  const size = machine.size(path)
  const unread = (exists: boolean) => ({ sheetList: Array.from({ length: count }, (_, index) => absentSheet(index + 1, file, exists)), surplus: [] })
  if (size === undefined) return unread(false)
  const text = drawingTexts.get(path)
  if (!text) {
    const rule = size > largestPdfBytes ? loadRules.fileTooLarge : loadRules.unreadableFile
    const message = size > largestPdfBytes ? `the file has ${Math.round(size / 1_000_000)} MB` : 'the file cannot be read'
    const note = size > largestPdfBytes ? `PDFs up to ${largestPdfBytes / 1_000_000} MB are read; nothing in this one was checked` : undefined
    sink(rule, { message, place: startOfFile(file), ...(note ? { note } : {}) })
    return unread(true)
  }
  if ('refused' in text) {
    const { message, help } = refusals[text.refused]
    const reason = text.reason.replace(/[.\s]+$/, '')
    sink(loadRules.brokenDrawing, {
      message,
      place: startOfFile(file),
      ...(reason && text.refused !== 'encrypted' ? { note: `the reason given: ${reason}` } : {}),
      help,
    })
    return unread(true)
  }
  const { pages } = text
  const sheetList = Array.from({ length: count }, (_, index): Sheet => {
    const page = pages[index]
    if (!page) return absentSheet(index + 1, file, false)
    const place = placeOfPage(file, index + 1)
    if (!('unreadable' in page)) return pdfSheet(page, { place, number: index + 1, bytes: () => machine.read(path) })
    sink(loadRules.brokenDrawing, {
      message: `sheet ${index + 1} of drawing \`${row.number.value}\` cannot be read`,
      place,
      note: `the reason given: ${page.unreadable.replace(/[.\s]+$/, '')}`,
      help: 'export the drawing again',
    })
    return { ...absentSheet(index + 1, file, true), place }
  })
  return { sheetList, surplus: pages.slice(count).map((_, index) => placeOfPage(file, count + index + 1)) }
}

const placeOfPage = (file: string, page: number): Place => ({ file, line: page, column: 1, endLine: page, endColumn: 1 })

function pdfSheet(page: PdfPage, { place, number, bytes }: { place: Place; number: number; bytes(): Uint8Array }): Sheet {
  return {
    number,
    file: place.file,
    place,
    exists: true,
    readable: true,
    svg: () => '',
    pdf: { page: number, bytes },
    viewBox: { x: 0, y: 0, width: page.width, height: page.height },
    texts: page.texts.map((text) => ({ ...text, place })),
  }
}
