import type { SourceText } from '../source/source-text.ts'
import { parseCsv } from './csv.ts'
import type { DecimalSign } from './decimal.ts'
import { readBytes } from './decode.ts'
import type { Folder } from './folder.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { type Memory, ofText } from './memory.ts'
import type { Rows } from './rows.ts'
import { parsePlcopen } from './symbols/plcopen.ts'
import { loadWorksheet } from './xlsx/load-worksheet.ts'
import type { YamlValue } from './yaml.ts'

/** How machine.yaml names the file of a table. */
export interface DataEntry {
  file: string
  sheet?: string | undefined
  headerRow?: number | undefined
  decimal?: DecimalSign | undefined
}

export interface DataFiles {
  machine: Folder
  yaml: YamlValue
  read(folder: Folder, path: string): SourceText | undefined
  /** Keeps what a report shows round the cells of a workbook. */
  keepText(key: string, text: string): void
  memory: Memory
  sink: Sink
}

/** Whether a file is read as a workbook, by the end of its name. */
export const isWorkbook = (path: string) => /\.(xls\w?|ods)$/i.test(path)

/** The cells of a table, from its CSV file or its worksheet. Undefined, with a finding, when they cannot be read. */
export function dataRows(table: string, entry: DataEntry, files: DataFiles): Rows | undefined {
  const { machine, yaml, read, keepText, memory, sink } = files
  const at = (key: string) => yaml.placeOf(['data', table, key])
  if (!hasFile(entry.file, ['data', table, 'file'], files)) return undefined
  if (isWorkbook(entry.file)) {
    if (entry.decimal !== undefined)
      sink(loadRules.unknownKey, {
        message: `\`decimal\` is for CSV files, and \`${entry.file}\` is a workbook`,
        place: at('decimal'),
        note: 'a number in a workbook has no sign until it is shown',
        help: 'take it out',
      })
    const bytes = readBytes(machine, entry.file, sink)
    const loaded = bytes && loadWorksheet(bytes, machine.label + entry.file, { sheet: entry.sheet, headerRow: entry.headerRow, placeOf: at }, sink)
    if (loaded) keepText(loaded.key, loaded.text)
    return loaded?.rows
  }
  for (const key of ['sheet', 'headerRow'] as const)
    if (entry[key] !== undefined)
      sink(loadRules.unknownKey, {
        message: `\`${key}\` is for workbooks, and \`${entry.file}\` is read as text`,
        place: at(key),
        help: 'take it out, or name the workbook',
      })
  const source = read(machine, entry.file)
  if (/\.xml$/i.test(entry.file)) return source && ofText(memory, 'variables', source, sink, (sink) => parsePlcopen(source, sink))
  return source && ofText(memory, 'cells', source, sink, (sink) => parseCsv(source, sink))
}

/** Whether a data file is there; a finding where it is not. */
export function hasFile(path: string, at: readonly string[], { machine, yaml, sink }: Pick<DataFiles, 'machine' | 'yaml' | 'sink'>): boolean {
  if (machine.size(path) !== undefined && !path.split('/').includes('..')) return true
  sink(loadRules.missingFile, {
    message: `there is no file \`${path}\``,
    place: yaml.placeOf(at),
    note: 'nothing that it should hold was checked',
    help: 'the path counts from the machine folder',
  })
  return false
}
