import { basename, dirname } from 'node:path'
import { parseCsv } from '../load/csv.ts'
import { isWorkbook } from '../load/data-rows.ts'
import { readBytes, readText } from '../load/decode.ts'
import { diskFolder } from '../load/folder.ts'
import type { Rows } from '../load/rows.ts'
import { loadWorksheet } from '../load/xlsx/load-worksheet.ts'
import type { Problem } from '../source/finding.ts'
import { startOfFile } from '../source/place.ts'
import { UsageError } from './options.ts'

/** The heading and the rows of an export, as texts. Throws a UsageError for a file that holds none. */
export function readExport(path: string): { header: string[]; rows: string[][] } {
  const problems: Problem[] = []
  const rows = cellsOf(path, problems)
  if (!rows || rows.header.length === 0) throw new UsageError(`\`${path}\`: ${problems[0]?.message ?? 'the file is empty'}`)
  return { header: rows.header.map(({ value }) => value), rows: rows.records.map(({ cells }) => cells.map(({ value }) => value)) }
}

/** What is wrong in single cells is told by the check that follows. */
function cellsOf(path: string, problems: Problem[]): Rows | undefined {
  const folder = diskFolder(dirname(path), '')
  const name = basename(path)
  const sink = (_: unknown, problem: Problem) => problems.push(problem)
  if (!isWorkbook(name)) {
    const source = readText(folder, name, sink)
    return source && parseCsv(source, sink)
  }
  const bytes = readBytes(folder, name, sink)
  const choice = { sheet: undefined, headerRow: undefined, placeOf: () => startOfFile(name) }
  return bytes && loadWorksheet(bytes, name, choice, sink)?.rows
}
