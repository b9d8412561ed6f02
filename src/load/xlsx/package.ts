import { posix } from 'node:path'
import { type ZipEntry, zipEntries } from '../../source/zip-entries.ts'
import { walkXml } from './walk-xml.ts'

/** Most that one part of a workbook may unpack to, in bytes. An I/O list of 50,000 rows and 17 columns has about 35 MB. */
const largestPart = 64_000_000

/** A workbook as the zip of XML parts that it is. */
export interface Package {
  has(part: string): boolean
  /** Walks a part. Answers why it cannot be read, or undefined. */
  walk(part: string, handlers: Parameters<typeof walkXml>[1]): string | undefined
  /** What a part refers to, by id: the kind of the other part, and its name. Empty where it refers to nothing. */
  relations(part: string): Map<string, { kind: string; part: string }>
}

/** Opens the zip; answers why it is no workbook that can be read. */
export function openPackage(bytes: Uint8Array): Package | { problem: string; help: string } {
  const other = otherKind(bytes)
  if (other) return other
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const all = zipEntries(bytes.length, (start, length) => buffer.subarray(start, start + Math.max(0, length)), largestPart)
  if (!all) return { problem: 'the file is no whole XLSX workbook: it is cut off, damaged or of another kind', help: again }
  const entries = new Map<string, ZipEntry>()
  for (const entry of all) {
    if (entries.has(entry.name)) return { problem: `the workbook holds \`${entry.name}\` twice`, help: again }
    entries.set(entry.name, entry)
  }
  const walk: Package['walk'] = (part, handlers) => {
    const entry = entries.get(part)
    if (!entry) return `\`${part}\` is not in it`
    if (entry.size > largestPart)
      return `\`${part}\` unpacks to ${Math.round(entry.size / 1_000_000)} MB; up to ${largestPart / 1_000_000} MB are read`
    const content = entry.read()
    if (!content) return `\`${part}\` in it is damaged`
    const problem = walkXml(content, handlers)
    return problem === undefined ? undefined : `\`${part}\` in it is not valid XML`
  }
  return {
    has: (part) => entries.has(part),
    walk,
    relations(part) {
      const found = new Map<string, { kind: string; part: string }>()
      walk(posix.join(posix.dirname(part), '_rels', `${posix.basename(part)}.rels`), {
        open(name, attribute) {
          const [id, type, target] = [attribute('Id'), attribute('Type'), attribute('Target')]
          if (name !== 'Relationship' || id === undefined || type === undefined || target === undefined) return
          found.set(id, { kind: type.slice(type.lastIndexOf('/') + 1), part: posix.resolve('/', posix.dirname(part), target).slice(1) })
        },
      })
      return found
    },
  }
}

const again = 'open it in a spreadsheet program and save it again as an XLSX workbook'

/** Compound files: the form of old workbooks, and of the wrapper round a locked one. Source: MS-CFB 2.2. */
const compoundMark = Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1])

function otherKind(bytes: Uint8Array): { problem: string; help: string } | undefined {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (buffer.subarray(0, 8).equals(compoundMark)) {
    if (buffer.includes(Buffer.from('EncryptedPackage', 'utf16le')))
      return { problem: 'the workbook is locked with a password', help: 'take the password off, and save it again' }
    return { problem: 'the file is a workbook in the old XLS form', help: again }
  }
  if (buffer.subarray(0, 2).toString('latin1') !== 'PK')
    return { problem: 'the file is no XLSX workbook', help: `${again}, or name it \`.csv\` if it is text` }
  return undefined
}
