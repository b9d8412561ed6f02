import type { Drawing, Sheet } from '../model/machine.ts'
import type { Row } from '../model/schema/tables.ts'
import { startOfFile } from '../source/place.ts'
import { absentSheet } from './absent-sheet.ts'
import type { readText } from './decode.ts'
import type { Folder } from './folder.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { type Memory, ofText } from './memory.ts'
import type { DrawingTexts } from './pdf/drawing-texts.ts'
import { loadPdfSheets } from './pdf/pdf-sheets.ts'
import { parseSheet } from './svg.ts'

type DrawingRow = Pick<Row<'drawings'>, 'number' | 'sheets' | 'file'>

export interface SheetFiles {
  machine: Folder
  drawingTexts: DrawingTexts
  read(folder: Folder, path: string): ReturnType<typeof readText>
  memory: Memory
  sink: Sink
}

/** More sheets than any machine has in one drawing: a number with a digit too many. */
const mostSheets = 999

/** The sheets of a drawing, from its PDF or from an SVG each, and those that the register does not count. */
export function loadSheets(row: DrawingRow, files: SheetFiles): Pick<Drawing, 'sheetList' | 'surplus'> {
  const { machine, read, memory, sink } = files
  const count = Math.min(row.sheets.value, mostSheets)
  const pdf = pdfOf(row, machine)
  if (pdf !== undefined) return loadPdfSheets(row, { path: pdf, count }, files)
  const sheetList = Array.from({ length: count }, (_, index): Sheet => {
    const path = sheetPath(row, index + 1)
    const source = machine.size(path) === undefined ? undefined : read(machine, path)
    return source
      ? ofText(memory, `sheet ${index + 1}`, source, sink, (sink) => parseSheet(source, index + 1, sink))
      : absentSheet(index + 1, machine.label + path, machine.size(path) !== undefined)
  })
  reportSecondFile(row, sheetList, files)
  return { sheetList, surplus: surplusPaths(row, count, machine).map((path) => startOfFile(machine.label + path)) }
}

/** Where a sheet lies: `drawings/E-101.svg`, and `drawings/E-104.2.svg` where there are several sheets. */
export function sheetPath(row: DrawingRow, sheet: number): string {
  const base = row.file?.value ?? `drawings/${row.number.value}.svg`
  return row.sheets.value === 1 ? base : numbered(base, sheet)
}

const numbered = (base: string, sheet: number) => base.replace(/(\.\w+)$/, `.${sheet}$1`)

/** The PDF that the register names, or the one of this number where no SVG is. */
function pdfOf(row: DrawingRow, machine: Folder): string | undefined {
  if (row.file) return /\.pdf$/i.test(row.file.value) ? row.file.value : undefined
  const path = usualPdf(row)
  const hasSvg = Array.from({ length: Math.min(row.sheets.value, mostSheets) }, (_, index) => sheetPath(row, index + 1)).some(
    (svg) => machine.size(svg) !== undefined,
  )
  return machine.size(path) !== undefined && !hasSvg ? path : undefined
}

const usualPdf = (row: DrawingRow) => `drawings/${row.number.value}.pdf`

function reportSecondFile(row: DrawingRow, sheetList: readonly Sheet[], { machine, sink }: SheetFiles): void {
  const first = sheetList.find(({ exists }) => exists)
  if (row.file || !first || machine.size(usualPdf(row)) === undefined) return
  sink(loadRules.drawingInTwoFiles, {
    message: `drawing \`${row.number.value}\` is also in \`${first.file}\``,
    place: startOfFile(machine.label + usualPdf(row)),
    related: [{ label: 'the other file', place: first.place }],
    note: 'the PDF was not read',
    help: 'take one of them away, or name the one that holds in the column `file` of the register',
  })
}

/** Sheets in a row after the last of the register. */
function surplusPaths(row: DrawingRow, count: number, machine: Folder): string[] {
  const base = row.file?.value ?? `drawings/${row.number.value}.svg`
  const found: string[] = []
  if (numbered(base, 1) === base) return found
  for (let sheet = count + 1; sheet <= mostSheets && machine.size(numbered(base, sheet)) !== undefined; sheet++) found.push(numbered(base, sheet))
  return found
}
