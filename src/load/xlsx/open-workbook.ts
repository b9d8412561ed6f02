import { startOfFile } from '../../source/place.ts'
import { loadRules, type Sink } from '../load-rules.ts'
import { builtInFormat, type NumberFormat, readFormat } from './number-format.ts'
import { openPackage, type Package } from './package.ts'
import { textCollector } from './rich-text.ts'

export interface Worksheet {
  name: string
  part: string
  hidden: boolean
}

/** A workbook without the cells of its sheets. */
export interface Workbook {
  file: string
  parts: Package
  worksheets: readonly Worksheet[]
  /** Texts that cells name by number. */
  texts: readonly string[]
  /** How cells show numbers, by the number of their style. */
  formats: readonly NumberFormat[]
  /** Dates count from 1904. */
  is1904: boolean
}

/** Opens an XLSX workbook (ECMA-376). Undefined, with one finding, when it cannot be read. */
export function openWorkbook(bytes: Uint8Array, file: string, sink: Sink): Workbook | undefined {
  const refuse = (message: string, help: string) => {
    sink(loadRules.unreadableWorkbook, { message, place: startOfFile(file), note: 'nothing in it was checked', help })
    return undefined
  }
  const parts = openPackage(bytes)
  if ('problem' in parts) return refuse(parts.problem, parts.help)
  const main = [...parts.relations('').values()].find(({ kind }) => kind === 'officeDocument')?.part
  if (main?.endsWith('.bin')) return refuse('the file is a workbook in the binary XLSB form', 'save it as an XLSX workbook')
  if (main === undefined && parts.has('content.xml')) return refuse('the file is an OpenDocument workbook', 'save it as an XLSX workbook')
  if (main === undefined) return refuse('the file is a zip, and no XLSX workbook is in it', 'save the list as an XLSX workbook')

  const relations = parts.relations(main)
  const worksheets: Worksheet[] = []
  let is1904 = false
  const partOf = (kind: string) => [...relations.values()].find((it) => it.kind === kind)?.part
  const problems = [
    parts.walk(main, {
      open(name, attribute) {
        if (name === 'workbookPr') is1904 = isTrue(attribute('date1904'))
        if (name !== 'sheet') return
        const relation = relations.get(attribute('id') ?? '')
        const state = attribute('state')
        if (relation?.kind === 'worksheet')
          worksheets.push({ name: attribute('name') ?? '', part: relation.part, hidden: state === 'hidden' || state === 'veryHidden' })
      },
    }),
  ]
  const texts: string[] = []
  const sharedPart = partOf('sharedStrings')
  if (sharedPart !== undefined)
    problems.push(
      parts.walk(
        sharedPart,
        textCollector('si', (text) => texts.push(text)),
      ),
    )
  const formats: NumberFormat[] = []
  const stylesPart = partOf('styles')
  if (stylesPart !== undefined) problems.push(parts.walk(stylesPart, styleReader(formats)))
  const problem = problems.find((it) => it !== undefined)
  if (problem !== undefined) return refuse(`the workbook cannot be read: ${problem}`, 'open it in a spreadsheet program and save it again')
  if (worksheets.length === 0) return refuse('the workbook has no worksheet', 'save the list as an XLSX workbook')
  return { file, parts, worksheets, texts, formats, is1904 }
}

export const isTrue = (value: string | undefined) => value === '1' || value === 'true'

/** Reads `styles.xml`: the number format of each cell style, in their order. */
function styleReader(formats: NumberFormat[]): Parameters<Package['walk']>[1] {
  const own = new Map<string, NumberFormat>()
  let inCellStyles = false
  return {
    open(name, attribute) {
      const id = attribute('numFmtId') ?? '0'
      if (name === 'numFmt') own.set(id, readFormat(attribute('formatCode') ?? ''))
      if (name === 'cellXfs') inCellStyles = true
      if (name === 'xf' && inCellStyles) formats.push(own.get(id) ?? builtInFormat(Number(id)))
    },
    close(name) {
      if (name === 'cellXfs') inCellStyles = false
    },
  }
}
