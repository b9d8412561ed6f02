import { crc32, inflateRawSync } from 'node:zlib'

/** One entry as the directory at the end of a zip lists it. */
export interface ZipEntry {
  /** As written, whatever it is: `../x` and a name that stands there twice included. */
  name: string
  /** What it says it unpacks to, in bytes. */
  size: number
  /** The content; undefined when the bytes do not keep what the directory says of them. Throws if the file cannot be read. */
  read(): Uint8Array | undefined
}

/** Reads `length` bytes from `start`, or as many as there are. */
export type ReadBytes = (start: number, length: number) => Buffer

const endMark = Buffer.from('PK\x05\x06')
const directoryMark = 0x02014b50
const entryMark = 0x04034b50
const endLength = 22
const longestComment = 0xffff

/**
 * The entries of a zip of `size` bytes, listed strictly; undefined when it is cut off, damaged or of another kind.
 * Own code because a check must see what an unpacking library smooths over: entries of one name, names that differ
 * between directory and entry, and content longer than it says. An entry that says it unpacks to more than
 * `largestEntry` bytes is not unpacked. Zip64 and encrypted entries are not read.
 */
export function zipEntries(size: number, bytes: ReadBytes, largestEntry: number): ZipEntry[] | undefined {
  const tailStart = Math.max(0, size - endLength - longestComment)
  const tail = bytes(tailStart, size)
  const at = tail.lastIndexOf(endMark)
  if (at < 0 || tail.length < at + endLength) return undefined
  const count = tail.readUInt16LE(at + 10)
  const isOnePart = tail.readUInt32LE(at + 4) === 0 && tail.readUInt16LE(at + 8) === count
  const length = tail.readUInt32LE(at + 12)
  const start = tail.readUInt32LE(at + 16)
  // Bytes before or between the parts would be read by some programs and not by others.
  if (!isOnePart || start + length !== tailStart + at || tail.length !== at + endLength + tail.readUInt16LE(at + 20)) return undefined
  const directory = bytes(start, length)
  const entries: ZipEntry[] = []
  for (let offset = 0; offset < directory.length; ) {
    if (directory.length < offset + 46 || directory.readUInt32LE(offset) !== directoryMark) return undefined
    const nameLength = directory.readUInt16LE(offset + 28)
    const end = offset + 46 + nameLength + directory.readUInt16LE(offset + 30) + directory.readUInt16LE(offset + 32)
    if (directory.length < end) return undefined
    const name = directory.subarray(offset + 46, offset + 46 + nameLength)
    entries.push(entryAt(directory.subarray(offset, offset + 46), name, bytes, largestEntry))
    offset = end
  }
  return entries.length === count ? entries : undefined
}

function entryAt(header: Buffer, name: Buffer, bytes: ReadBytes, largestEntry: number): ZipEntry {
  const encrypted = (header.readUInt16LE(8) & 1) === 1
  const method = header.readUInt16LE(10)
  const checksum = header.readUInt32LE(16)
  const packedSize = header.readUInt32LE(20)
  const size = header.readUInt32LE(24)
  const isLink = ((header.readUInt32LE(38) >>> 16) & 0o170000) === 0o120000
  const start = header.readUInt32LE(42)
  return {
    name: name.toString('utf8'),
    size,
    read() {
      const own = bytes(start, 30 + name.length)
      if (encrypted || isLink || size > largestEntry || !agrees(own, header, name)) return undefined
      const packed = bytes(start + 30 + name.length + own.readUInt16LE(28), packedSize)
      if (packed.length !== packedSize) return undefined
      const content = method === 0 ? packed : method === 8 ? inflate(packed, size) : undefined
      return content?.length === size && crc32(content) === checksum ? content : undefined
    },
  }
}

/** Whether an entry says of itself what the directory says; checksum and sizes may follow the data instead (flag bit 3). */
function agrees(own: Buffer, header: Buffer, name: Buffer): boolean {
  if (own.length !== 30 + name.length || own.readUInt32LE(0) !== entryMark || own.readUInt16LE(26) !== name.length) return false
  const sizesFollow = (own.readUInt16LE(6) & 8) !== 0
  const sameSizes = sizesFollow || own.subarray(14, 26).equals(header.subarray(16, 28))
  return own.subarray(30).equals(name) && own.readUInt16LE(8) === header.readUInt16LE(10) && sameSizes
}

function inflate(packed: Uint8Array, size: number): Uint8Array | undefined {
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, size) })
  } catch {
    return undefined // damaged, or longer than it says: the caller names the file
  }
}
