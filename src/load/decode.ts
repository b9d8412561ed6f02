import { startOfFile } from '../source/place.ts'
import { type SourceText, sourceText } from '../source/source-text.ts'
import type { Folder } from './folder.ts'
import { loadRules, type Sink } from './load-rules.ts'

/** Largest data file or page that is read, in bytes. A machine with 50,000 signals has an I/O list of about 8 MB. */
const largestFileBytes = 20_000_000

/** Reads a file as text. Undefined, with a finding, when there is no text in it to read. */
export function readText(folder: Folder, path: string, sink: Sink): SourceText | undefined {
  const file = folder.label + path
  const start = startOfFile(file)
  const bytes = readBytes(folder, path, sink)
  if (!bytes) return undefined
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    sink(loadRules.notText, { message: 'the file is in UTF-16', place: start, help: 'save it as UTF-8' })
    return undefined
  }
  if (bytes.includes(0)) {
    sink(loadRules.notText, {
      message: 'the file is not text: it holds zero bytes',
      place: start,
      help: 'export it as text; a table may also be an XLSX workbook whose name ends in `.xlsx`',
    })
    return undefined
  }
  return sourceText(file, decode(bytes, file, sink))
}

/** Reads a data file or page of a size that a machine can have. Undefined, with a finding, when that cannot be. */
export function readBytes(folder: Folder, path: string, sink: Sink): Uint8Array | undefined {
  const start = startOfFile(folder.label + path)
  const size = folder.size(path)
  if (size !== undefined && size > largestFileBytes) {
    sink(loadRules.fileTooLarge, {
      message: `the file has ${Math.round(size / 1_000_000)} MB`,
      place: start,
      note: `files up to ${largestFileBytes / 1_000_000} MB are read; nothing in this one was checked`,
      help: 'export it again, with this machine only',
    })
    return undefined
  }
  try {
    return folder.read(path)
  } catch (error) {
    sink(loadRules.unreadableFile, { message: 'the file cannot be read', place: start, note: reason(error) })
    return undefined
  }
}

function decode(bytes: Uint8Array, file: string, sink: Sink): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    const text = new TextDecoder('windows-1252').decode(bytes)
    const first = [...text].findIndex((character) => character > '\u007f')
    sink(loadRules.oldEncoding, {
      message: 'the file is not UTF-8 and was read as Windows-1252',
      place: sourceText(file, text).place(first, first + 1),
      help: 'save it as UTF-8, and check that accents and signs are still right',
    })
    return text
  }
}

/** The reason a system call gave, without its call and path. */
export function reason(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error)
  return text.replace(/,.*$/, '')
}
