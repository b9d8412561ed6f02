import { reedSolomon } from './reed-solomon.ts'

/** Dark modules of a QR code, row by row, without the quiet zone of 4 modules that it needs round it. */
export type QrCode = readonly (readonly boolean[])[]

interface Version {
  version: number
  /** Bits of the error correction level in the format: L 1, M 0. */
  level: number
  dataBytes: number
  checkBytes: number
}

/** The versions with one block, level M as long as there is one. Source: ISO/IEC 18004, tables 7 and 9 (from memory). */
const versions: readonly Version[] = [
  { version: 1, level: 0, dataBytes: 16, checkBytes: 10 },
  { version: 2, level: 0, dataBytes: 28, checkBytes: 16 },
  { version: 3, level: 0, dataBytes: 44, checkBytes: 26 },
  { version: 4, level: 1, dataBytes: 80, checkBytes: 20 },
  { version: 5, level: 1, dataBytes: 108, checkBytes: 26 },
]

/** The QR code of a text in UTF-8, byte mode. RangeError above 106 bytes. */
export function qrCode(text: string): QrCode {
  const bytes = [...new TextEncoder().encode(text)]
  const version = versions.find(({ dataBytes }) => bytes.length <= dataBytes - 2)
  if (!version) throw new RangeError(`a QR code holds 106 bytes, and this text has ${bytes.length}`)
  const data = dataBytesOf(bytes, version.dataBytes)
  const bits = [...data, ...reedSolomon(data, version.checkBytes)].flatMap(bitsOf)
  const candidates = masks.map((mask, index) => drawn(version, bits, mask, index))
  return candidates.reduce((best, it) => (penalty(it) < penalty(best) ? it : best))
}

const bitsOf = (byte: number) => Array.from({ length: 8 }, (_, index) => ((byte >> (7 - index)) & 1) === 1)

/** Mode, length, text, terminator, and filling up to the size. */
function dataBytesOf(bytes: readonly number[], size: number): number[] {
  const nibbles = [4, bytes.length >> 4, bytes.length & 15, ...bytes.flatMap((it) => [it >> 4, it & 15]), 0]
  const data = Array.from({ length: nibbles.length / 2 }, (_, index) => ((nibbles[2 * index] ?? 0) << 4) | (nibbles[2 * index + 1] ?? 0))
  return [...data, ...Array.from({ length: size - data.length }, (_, index) => (index % 2 === 0 ? 0xec : 0x11))]
}

type Mask = (x: number, y: number) => boolean
const masks: readonly Mask[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
]

function drawn({ version, level }: Version, bits: readonly boolean[], mask: Mask, maskNumber: number): boolean[][] {
  const size = 17 + 4 * version
  const grid: (boolean | undefined)[][] = Array.from({ length: size }, () => new Array<boolean | undefined>(size).fill(undefined))
  const set = (x: number, y: number, dark: boolean) => {
    const row = grid[y]
    if (row && x >= 0 && x < size) row[x] = dark
  }
  for (let at = 8; at < size - 8; at++) {
    set(6, at, at % 2 === 0)
    set(at, 6, at % 2 === 0)
  }
  for (const [x, y] of [
    [3, 3],
    [size - 4, 3],
    [3, size - 4],
  ] as const)
    square(x, y, 4, (ring) => ring !== 2 && ring !== 4, set)
  if (version > 1) square(size - 7, size - 7, 2, (ring) => ring !== 1, set)
  drawFormat(size, (level << 3) | maskNumber, set)
  let next = 0
  for (const [x, y] of path(size)) {
    if (grid[y]?.[x] !== undefined) continue
    set(x, y, (bits[next++] ?? false) !== mask(x, y))
  }
  return grid.map((row) => row.map((it) => it === true))
}

function square(x: number, y: number, reach: number, isDark: (ring: number) => boolean, set: (x: number, y: number, dark: boolean) => void): void {
  for (let dx = -reach; dx <= reach; dx++) for (let dy = -reach; dy <= reach; dy++) set(x + dx, y + dy, isDark(Math.max(Math.abs(dx), Math.abs(dy))))
}

function drawFormat(size: number, format: number, set: (x: number, y: number, dark: boolean) => void): void {
  let rest = format
  for (let step = 0; step < 10; step++) rest = (rest << 1) ^ ((rest >> 9) * 0x537)
  const bits = ((format << 10) | rest) ^ 0x5412
  const bit = (index: number) => ((bits >> index) & 1) === 1
  for (let index = 0; index < 6; index++) set(8, index, bit(index))
  set(8, 7, bit(6))
  set(8, 8, bit(7))
  set(7, 8, bit(8))
  for (let index = 9; index < 15; index++) set(14 - index, 8, bit(index))
  for (let index = 0; index < 8; index++) set(size - 1 - index, 8, bit(index))
  for (let index = 8; index < 15; index++) set(8, size - 15 + index, bit(index))
  set(8, size - 8, true)
}

/** Pairs of columns from the right, up and down in turn, past the timing column. */
function* path(size: number): Generator<readonly [number, number]> {
  for (let right = size - 1; right >= 1; right -= 2) {
    const column = right <= 6 ? right - 1 : right
    const isUpward = ((column + 1) & 2) === 0
    for (let step = 0; step < size; step++) for (const x of [column, column - 1]) yield [x, isUpward ? size - 1 - step : step]
  }
}

/** Long runs, squares of one colour and an uneven share of dark modules make a code hard to read. */
function penalty(code: QrCode): number {
  const size = code.length
  const lines = [...code, ...code.map((_, x) => code.map((row) => row[x] === true))].map((line) => line.map((it) => (it ? '1' : '0')).join(''))
  let sum = 0
  for (const line of lines) {
    for (const [run] of line.matchAll(/0{5,}|1{5,}/g)) sum += run.length - 2
    for (const finder of ['00001011101', '10111010000']) for (let at = line.indexOf(finder); at >= 0; at = line.indexOf(finder, at + 1)) sum += 40
  }
  for (let y = 1; y < size; y++)
    for (let x = 1; x < size; x++) if (new Set([code[y]?.[x], code[y - 1]?.[x], code[y]?.[x - 1], code[y - 1]?.[x - 1]]).size === 1) sum += 3
  const dark = code.flat().filter(Boolean).length / (size * size)
  return sum + 10 * Math.floor(Math.abs(dark - 0.5) * 20)
}
