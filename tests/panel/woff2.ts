import { readFileSync } from 'node:fs'
import { brotliDecompressSync } from 'node:zlib'

/** Tags by their number in the directory of a WOFF2 file. Source: W3C WOFF File Format 2.0, 4.1. Those after `OS/2` are of no interest here. */
const tags = ['cmap', 'head', 'hhea', 'hmtx', 'maxp', 'name', 'OS/2']
const glyf = 10
const loca = 11
const written = 63

/** Height of a capital letter as a share of the font size: sCapHeight of OS/2 through unitsPerEm of head. */
export function capitalShareOf(file: string): number {
  const tables = tablesOf(readFileSync(file))
  const [head, os2] = [tables.get('head'), tables.get('OS/2')]
  if (!head || !os2) throw new Error(`${file} has no head or no OS/2`)
  return os2.readInt16BE(88) / head.readUInt16BE(18)
}

function tablesOf(bytes: Buffer): Map<string, Buffer> {
  let at = 48
  const length = () => {
    for (let value = 0; ; ) {
      const byte = bytes.readUInt8(at++)
      value = value * 128 + (byte & 127)
      if (byte < 128) return value
    }
  }
  const directory = Array.from({ length: bytes.readUInt16BE(12) }, () => {
    const flags = bytes.readUInt8(at++)
    const number = flags & 63
    const tag = number === written ? bytes.toString('latin1', at, at + 4) : (tags[number] ?? `table ${number}`)
    if (number === written) at += 4
    const plain = length()
    // A table that is packed in its own way has a second length; of glyf and loca version 3 is the plain one.
    const isPacked = flags >> 6 !== (number === glyf || number === loca ? 3 : 0)
    return { tag, length: isPacked ? length() : plain }
  })
  const text = brotliDecompressSync(bytes.subarray(at, at + bytes.readUInt32BE(20)))
  let from = 0
  return new Map(
    directory.map(({ tag, length }) => {
      from += length
      return [tag, text.subarray(from - length, from)]
    }),
  )
}
