import { converted, type Dimension, type Unit, unitOf, units } from './unit.ts'

/** A reading that was typed. */
export interface Reading {
  value: number
  unit: string
  dimension: Dimension
  /** As typed, where `value` is in another unit. */
  typed: { value: number; unit: string }
}

export type UnreadReason = 'empty' | 'no-number' | 'not-one-number' | 'no-unit' | 'unknown-unit' | 'wrong-dimension'

/** Why a text is no reading. Nothing is guessed: a unit in the wrong case is named, and not taken. */
export interface Unread {
  unread: UnreadReason
  /** The unit as it was typed. */
  unit?: string
  /** Units that differ from it in case only. */
  perhaps?: readonly string[]
}

const number = /^([+\-−–]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)((?:[eE][+\-−]?\d+)?)\s*(.*)$/u

/**
 * Reads `12,1 mA` or `23.6V`. One comma or one dot is the decimal mark; a text with thousands set apart is refused,
 * as is any unit that does not measure what `wanted` does. With `wanted` the value is in that unit.
 */
export function readQuantity(text: string, wanted?: string): Reading | Unread {
  const plain = text.replace(/[\u00a0\u2007\u2009\u202f]/g, ' ').trim()
  if (plain === '') return { unread: 'empty' }
  const [, sign = '', digits, exponent = '', rest = ''] = number.exec(plain) ?? []
  if (digits === undefined) return { unread: 'no-number' }
  if (/^(?:[.,'’]|\d(?!\/))/.test(rest)) return { unread: 'not-one-number' }
  if (rest === '') return { unread: 'no-unit' }
  const unit = unitOf(rest)
  if (!unit) return unknown(rest)
  const value = Number(`${sign === '' || sign === '+' ? '' : '-'}${digits.replace(',', '.')}${exponent.replace('−', '-')}`)
  if (!Number.isFinite(value)) return { unread: 'no-number' }
  return wanted === undefined ? reading(value, unit, unit) : reading(value, unit, unitOf(wanted))
}

function reading(value: number, unit: Unit, into: Unit | undefined): Reading | Unread {
  const there = into && converted(value, unit, into)
  if (!into || there === undefined) return { unread: 'wrong-dimension', unit: unit.symbol }
  return { value: there, unit: into.symbol, dimension: into.dimension, typed: { value, unit: unit.symbol } }
}

function unknown(written: string): Unread {
  const lower = written.toLowerCase()
  const perhaps = units.map(({ symbol }) => symbol).filter((symbol) => symbol.toLowerCase() === lower)
  return { unread: 'unknown-unit', unit: written, ...(perhaps.length > 0 ? { perhaps } : {}) }
}
