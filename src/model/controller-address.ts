import type { Machine, Signal } from './machine.ts'

/** Numbers of one width: a bit 1, `B` 8, `W` 16, `D` 32, `L` 64. Source: IEC 61131-3, direct representation. */
const widths: Readonly<Record<string, number>> = { '': 1, X: 1, B: 8, W: 16, D: 32, L: 64 }

/** A controller address, read. */
export interface ControllerAddress {
  /** `iec`: `%IX0.3`. `letters`: `I0.3`, `E0.3`, `PIW256`, which count bytes. */
  form: 'iec' | 'letters'
  area: 'input' | 'output' | 'memory'
  widthBit: number
  /** The numbers of its levels: `%IX0.3` has 0 and 3. Empty for a location that is still to be assigned, `%I*`. */
  levels: readonly number[]
}

const areas: Readonly<Record<string, ControllerAddress['area']>> = { I: 'input', E: 'input', Q: 'output', A: 'output', M: 'memory' }

/** Reads an address in the forms of IEC 61131-3 and of letters with byte and bit (common practice); undefined for any other. */
export function readAddress(written: string): ControllerAddress | undefined {
  const text = written.toUpperCase()
  const iec = /^%([IQM])(?:\*|([XBWDL]?)(\d+(?:\.\d+)*))$/.exec(text)
  const [, letter = '', size = '', levels = ''] = iec ?? /^P?([IEQAM])([BWD]?)(\d+(?:\.\d+)?)$/.exec(text) ?? []
  const area = areas[letter]
  const widthBit = widths[size]
  if (!area || !widthBit) return undefined
  const numbers = levels === '' ? [] : levels.split('.').map(Number)
  // `I5` and `Q2` are names of terminals on small controllers, and `IW4.2` is no form of this kind.
  if (!iec && numbers.length !== (size === '' ? 2 : 1)) return undefined
  return { form: iec ? 'iec' : 'letters', area, widthBit, levels: numbers }
}

/** The number of a bit inside its byte or word; undefined for what is no bit, or has other levels than these two. */
export function bitOf({ widthBit, levels }: ControllerAddress): number | undefined {
  return widthBit === 1 && levels.length === 2 ? levels[1] : undefined
}

/**
 * The highest bit number of this controller: as machine.yaml says, or 7 where bit numbers above 7 are as rare
 * as a slip, or 15 or 31 as the list has them. A list of fewer than 16 bits shows nothing.
 */
export function highestBitOf({ file, signals, spares }: Pick<Machine, 'file' | 'signals' | 'spares'>): number {
  if (file.controller?.highestBit !== undefined) return file.controller.highestBit
  const bits = [...signals, ...spares].flatMap(({ address }) => {
    const read = readAddress(address.value)
    const bit = read?.form === 'iec' ? bitOf(read) : undefined
    return bit === undefined ? [] : [bit]
  })
  const above = bits.filter((bit) => bit > 7)
  if (above.length * 16 <= bits.length) return 7
  return above.some((bit) => bit > 15) ? 31 : 15
}

/** Bits of the memory that an address takes, in a controller whose word numbers count bytes or words; undefined for other levels. */
export function spanOf(
  { form, widthBit, levels }: ControllerAddress,
  wordNumbers: 'bytes' | 'words',
  highestBit: number,
): { start: number; end: number } | undefined {
  const [number, bit] = levels
  if (number === undefined || levels.length > 2) return undefined
  if (widthBit === 1) {
    if (bit === undefined) return undefined
    const start = number * (form === 'letters' ? 8 : highestBit + 1) + bit
    return { start, end: start + 1 }
  }
  if (bit !== undefined) return undefined
  const start = number * (wordNumbers === 'bytes' || form === 'letters' ? 8 : widthBit)
  return { start, end: start + widthBit }
}

/** Letters in either case, and `%IX0.0` for `%I0.0`: X, a bit, may be left out. Source: IEC 61131-3, direct representation. */
export function sameAddress(address: string): string {
  return address
    .toUpperCase()
    .replace(/\s/g, '')
    .replace(/^%([IQM])X(?=\d)/, '%$1')
}

/** The same text for two addresses that are one place in the controller, in whatever form they are written: `%IX0.3`, `I0.3`. */
export function locationKey(address: string): string {
  const read = readAddress(address)
  return read && read.levels.length > 0 ? `${read.area} ${read.widthBit} ${read.levels.join('.')}` : sameAddress(address)
}

const inputTypes: readonly string[] = ['DI', 'SDI', 'AI', 'RTD', 'TC', 'CNT', 'ENC'] satisfies Signal['type']['value'][]

/** Whether a signal of this type goes into the controller; otherwise it comes out of it. */
export function isInput(type: Signal['type']['value']): boolean {
  return inputTypes.includes(type)
}
