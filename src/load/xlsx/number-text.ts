import type { NumberFormat } from './number-format.ts'

/** The text of a number, and what the spreadsheet shows for it where that differs. */
export interface NumberText {
  value: string
  shown?: string
}

/** A number as its format means it: the digits of a code, an ISO 8601 date or time, else a plain decimal number. */
export function numberText(number: number, format: NumberFormat, is1904: boolean): NumberText {
  // A spreadsheet keeps and shows 15 significant digits: 0.1 + 0.2 is 0.3.
  const kept = Number(number.toPrecision(15))
  const value = plainDecimal(kept)
  if (format.kind === 'date') return { value: isoText(kept, format, is1904) ?? value }
  if (format.kind === 'code') {
    if (Number.isInteger(kept) && kept >= 0) return { value: codeText(value, format) }
    return { value, shown: `${kept < 0 ? '-' : ''}${codeText(plainDecimal(Math.round(Math.abs(kept))), format)}` }
  }
  if (format.kind === 'plain') return { value }
  const shown = decimalText(kept, format)
  return shown === value ? { value } : { value, shown }
}

/** A number without an exponent. */
function plainDecimal(number: number): string {
  const [, sign = '', whole = '', places = '', exponent] = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(number)) ?? []
  if (exponent === undefined) return String(number)
  const digits = whole + places
  const point = whole.length + Number(exponent)
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`
  return sign + digits.padEnd(point, '0')
}

/** Digits from the right into the placeholders; what is left over stands before the first one. */
function codeText(digits: string, { parts, digits: places }: Extract<NumberFormat, { kind: 'code' }>): string {
  const padded = digits.padStart(places, '0')
  let next = 0
  return parts
    .map((part) => {
      if (part.startsWith('"')) return part.slice(1, -1)
      if (part !== '0') return part
      const from = next
      next = from === 0 ? padded.length - places + 1 : from + 1
      return padded.slice(from, next)
    })
    .join('')
}

function decimalText(number: number, { decimals, thousands, percent, before, after }: Extract<NumberFormat, { kind: 'decimals' }>): string {
  const [whole = '', places] = plainDecimal(Math.abs(percent ? number * 100 : number)).split('.')
  const text =
    places === undefined || places.length <= decimals ? `${whole}.${(places ?? '').padEnd(decimals, '0')}` : rounded(number, decimals, percent)
  const [front = '', back = ''] = text.split('.')
  const grouped = thousands ? front.replace(/\B(?=(\d{3})+$)/g, ',') : front
  return `${number < 0 ? '-' : ''}${before}${grouped}${back === '' ? '' : `.${back}`}${after}${percent ? '%' : ''}`
}

const rounded = (number: number, decimals: number, percent: boolean) => Math.abs(percent ? number * 100 : number).toFixed(decimals)

const lastDay = 2_958_465

/** A serial number as date and time; undefined where no calendar has it. Day 1 is 1900-01-01, in the other system 1904-01-02. */
function isoText(serial: number, { date, time, elapsed }: Extract<NumberFormat, { kind: 'date' }>, is1904: boolean): string | undefined {
  if (serial < 0 || serial > lastDay + 1) return undefined
  const seconds = Math.round(serial * 86_400)
  const days = date ? Math.floor((time ? seconds : Math.floor(serial) * 86_400) / 86_400) : 0
  const rest = elapsed ? seconds : seconds - Math.floor(seconds / 86_400) * 86_400
  const two = (number: number) => String(number).padStart(2, '0')
  const clock = `${two(Math.floor(rest / 3600))}:${two(Math.floor(rest / 60) % 60)}${rest % 60 === 0 ? '' : `:${two(rest % 60)}`}`
  if (!date) return clock
  return time ? `${dateText(days, is1904)}T${clock}` : dateText(days, is1904)
}

/** Days between 0000-03-01 and the day before the first of each system. */
const day1900 = 693_899
const day1904 = 695_361

/**
 * The day of a serial number. The system of 1900 counts a 29 February 1900 that never was, as 60, so the days before
 * it are one later than they seem. Source: ECMA-376 part 1, 18.17.4.1.
 */
function dateText(days: number, is1904: boolean): string {
  if (!is1904 && days === 60) return '1900-02-29'
  const since = days + (is1904 ? day1904 : days < 60 ? day1900 + 1 : day1900)
  // Years from March, in 400 years of 146,097 days: the Gregorian calendar.
  const era = Math.floor(since / 146_097)
  const dayOfEra = since - era * 146_097
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365)
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100))
  const march = Math.floor((5 * dayOfYear + 2) / 153)
  const month = march < 10 ? march + 3 : march - 9
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0)
  const dayOfMonth = dayOfYear - Math.floor((153 * march + 2) / 5) + 1
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`
}
