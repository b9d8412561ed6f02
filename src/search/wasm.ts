/** The few parts of the WebAssembly binary format that lowering needs. Source: WebAssembly Core Specification 1.0, chapter 5. */

export const sectionId = { custom: 0, type: 1, import: 2, function: 3, table: 4, global: 6, export: 7, code: 10 } as const
export const externKind = { function: 0, table: 1, memory: 2, global: 3 } as const
export const valueType = { i32: 0x7f, externref: 0x6f } as const
export const opcode = { end: 0x0b, globalSet: 0x24, i32Const: 0x41 } as const
export const functionType = 0x60

/** Bytes that are being read. */
export interface Reader {
  readonly bytes: Uint8Array
  at: number
}

export interface Section {
  readonly id: number
  readonly bytes: Uint8Array
}

const magicAndVersion = [0, 0x61, 0x73, 0x6d, 1, 0, 0, 0]

export function readSections(module: Uint8Array): Section[] {
  if (magicAndVersion.some((byte, index) => module[index] !== byte)) throw new Error('this is no WebAssembly module of version 1')
  const reader: Reader = { bytes: module, at: magicAndVersion.length }
  const sections: Section[] = []
  while (reader.at < module.length) {
    const id = readByte(reader)
    sections.push({ id, bytes: readBytes(reader, readNumber(reader)) })
  }
  return sections
}

export function writeSections(sections: readonly Section[]): Uint8Array<ArrayBuffer> {
  const parts = [Uint8Array.from(magicAndVersion), ...sections.flatMap(({ id, bytes }) => [Uint8Array.from([id, ...number(bytes.length)]), bytes])]
  const module = new Uint8Array(parts.reduce((length, part) => length + part.length, 0))
  let at = 0
  for (const part of parts) {
    module.set(part, at)
    at += part.length
  }
  return module
}

export function readByte(reader: Reader): number {
  const byte = reader.bytes[reader.at++]
  if (byte === undefined) throw new Error('the WebAssembly module ends too early')
  return byte
}

export function readBytes(reader: Reader, length: number): Uint8Array {
  const bytes = reader.bytes.subarray(reader.at, reader.at + length)
  if (bytes.length < length) throw new Error('the WebAssembly module ends too early')
  reader.at += length
  return bytes
}

/** An unsigned LEB128 number of up to 32 bits. */
export function readNumber(reader: Reader): number {
  let value = 0
  for (let shift = 0; ; shift += 7) {
    const byte = readByte(reader)
    value |= (byte & 127) << shift
    if (byte < 128) return value >>> 0
  }
}

export function readName(reader: Reader): string {
  return new TextDecoder().decode(readBytes(reader, readNumber(reader)))
}

/** Reads a vector: its length, then each item. */
export function readEach<T>(reader: Reader, readItem: (index: number) => T): T[] {
  return Array.from({ length: readNumber(reader) }, (_, index) => readItem(index))
}

/** A number as unsigned LEB128. */
export function number(value: number): number[] {
  const bytes: number[] = []
  let rest = value
  do {
    const low = rest & 127
    rest >>>= 7
    bytes.push(rest > 0 ? low | 128 : low)
  } while (rest > 0)
  return bytes
}

export function name(text: string): number[] {
  const bytes = new TextEncoder().encode(text)
  return [...number(bytes.length), ...bytes]
}

/** A vector: the number of items, then the items. */
export function vector(items: readonly Iterable<number>[]): Uint8Array {
  const bytes = number(items.length)
  for (const item of items) for (const byte of item) bytes.push(byte)
  return Uint8Array.from(bytes)
}
