import { basename, dirname } from 'node:path'
import { parseCsv } from '../load/csv.ts'
import { readText } from '../load/decode.ts'
import { diskFolder } from '../load/folder.ts'
import type { Problem } from '../source/finding.ts'
import { UsageError } from './options.ts'

/** The heading and the rows of an export, as texts. Throws a UsageError for a file that holds none. */
export function readExport(path: string): { header: string[]; rows: string[][] } {
  const problems: Problem[] = []
  const source = readText(diskFolder(dirname(path), ''), basename(path), (_, problem) => problems.push(problem))
  if (!source) throw new UsageError(`\`${path}\`: ${problems[0]?.message ?? 'the file cannot be read'}`)
  // What is wrong in the file is told by the check that follows.
  const { header, records } = parseCsv(source, () => undefined)
  if (header.length === 0) throw new UsageError(`\`${path}\`: the file is empty`)
  return { header: header.map(({ value }) => value), rows: records.map(({ cells }) => cells.map(({ value }) => value)) }
}
