import { normalise } from '../designation.ts'
import { editDistance } from '../edit-distance.ts'
import { isUnit } from '../unit-of-measure.ts'
import { couldHoldNumber, dashes, looks, unseen } from './look-alikes.ts'
import { isTradeWord } from './trade-words.ts'

/** What else than devices carries a number in the data. */
const numberedKinds = ['drawing', 'part', 'alarm'] as const
export type NumberedKind = (typeof numberedKinds)[number]

/** A drawing, part or alarm number in words, without an element. Offsets are those of the text it was found in. */
export interface NumberMention {
  start: number
  end: number
  /** As written. */
  written: string
  /** What carries it or, where nothing does, what its form and the word before it speak of. */
  kinds: readonly NumberedKind[]
  known: boolean
  /** The number that it looks like and is not. */
  meant?: string
}

type Found = Omit<NumberMention, 'start' | 'end' | 'written'>

export type ReadNumbers = (text: string) => NumberMention[]

/** What a writer calls each kind in English and Spanish, before its number. */
const nouns: Readonly<Record<NumberedKind, string>> = {
  drawing: 'drawings?|planos?|dibujos?',
  part: 'parts?|spares?|piezas?|repuestos?|recambios?',
  alarm: 'alarms?|alarmas?',
}

const listed = '(?:\\S*\\d\\S*(?:, ?| and | or | y | o ))*$'
const called = Object.fromEntries(
  numberedKinds.map((kind) => [
    kind,
    new RegExp(`(?<![\\p{L}\\p{N}])(?:${nouns[kind]})(?:,? (?:no\\.?|nos\\.?|number|numbers|n[.º°]+|número))?:? ${listed}`, 'iu'),
  ]),
)

/** What stands between blanks: no number holds one. */
const chunk = /[^ \t\n]+/g

const pattern = new RegExp(
  `(?<![\\p{L}\\p{N}_%@\\\\.:/+=-])[\\p{L}\\p{N}]+(?:[-./${dashes}${unseen}][\\p{L}\\p{N}]+)*(?![\\p{L}\\p{N}_@\\\\]|[:-][\\p{L}\\p{N}])`,
  'gu',
)

/**
 * Prepares the search for bare numbers of drawings, parts and alarms. A text has the form of one when its letters,
 * signs and the width of its numbers are those of a number in the machine's own list. Without letters, or with
 * fewer than three digits, it is one only behind the word for it: `part 4410-0999`.
 */
export function numberReader(numbers: Readonly<Record<NumberedKind, ReadonlySet<string>>>, otherNames: ReadonlySet<string>): ReadNumbers {
  const kinds = numberedKinds.filter((kind) => numbers[kind].size > 0)
  const all = [...new Set(kinds.flatMap((kind) => [...numbers[kind]]))]
  const forms = new Map(kinds.map((kind) => [kind, new Set([...numbers[kind]].map(formOf))]))
  const keys = new Map(kinds.map((kind) => [kind, new Set([...numbers[kind]].map(normalise))]))
  const starts = new Set(all.map(startOf))
  const byLooks = Map.groupBy(all, looks)
  const others = new Set([...otherNames].map((name) => name.toUpperCase()))
  const carriersOf = (number: string) => kinds.filter((kind) => numbers[kind].has(number))
  const meantBy = (word: string) => {
    const [alike, ...more] = byLooks.get(looks(word)) ?? []
    return more.length === 0 ? alike : undefined
  }

  const alone = (word: string): Found | undefined => {
    const carriers = carriersOf(word)
    if (carriers.length > 0) return isDistinct(word) ? { kinds: carriers, known: true } : undefined
    if (others.has(word.toUpperCase()) || isTradeWord(word) || isTradeWord(word.replace('-', ''))) return undefined
    const meant = meantBy(word)
    if (meant !== undefined && isDistinct(meant)) return { kinds: carriersOf(meant), known: false, meant }
    if (!/\p{L}/u.test(word) || !isDistinct(word)) return undefined
    // Glued letters and digits name goods of the trade as well: A6061 is an alloy where alarms begin with A0.
    if (!/[^\p{L}\p{N}]/u.test(word) && !starts.has(startOf(word))) return undefined
    const formed = kinds.filter((kind) => forms.get(kind)?.has(formOf(word)))
    return formed.length > 0 ? { kinds: formed, known: false } : undefined
  }
  const behind = (kind: NumberedKind, word: string): Found | undefined => {
    if (numbers[kind].has(word)) return { kinds: [kind], known: true }
    if (others.has(word.toUpperCase()) || carriersOf(word).length > 0 || !/\d/.test(word)) return undefined
    const meant = meantBy(word)
    if (meant !== undefined && numbers[kind].has(meant)) return { kinds: [kind], known: false, meant }
    const formed = forms.get(kind)?.has(formOf(word)) || keys.get(kind)?.has(normalise(word))
    return formed || isOneSlipFrom(numbers[kind], word) ? { kinds: [kind], known: false } : undefined
  }

  return (text) =>
    tokensOf(text).flatMap(({ token, index }) => {
      const before = text.slice(Math.max(0, index - 80), index)
      const kind = kinds.find((it) => called[it]?.test(before))
      const after = text.slice(index + token.length)
      for (const word of beginningsOf(token)) {
        const sure = kind && !isAmount(word, after) ? behind(kind, word) : undefined
        const found = sure ?? alone(word)
        if (found) return [{ ...found, written: word, start: index, end: index + word.length }]
      }
      return []
    })
}

/** What could be a number, alone or with letters, and its offset. */
function tokensOf(text: string): { token: string; index: number }[] {
  const parts = [...text.matchAll(chunk)].filter(([part]) => couldHoldNumber(part))
  return parts
    .flatMap(({ 0: part, index: at }) => [...part.matchAll(pattern)].map(({ 0: token, index }) => ({ token, index: at + index })))
    .filter(({ token }) => /\d/.test(token) || /^[\P{Ll}ol]*[OolI][\P{Ll}ol]*$/u.test(token))
}

/** The word, and what stands before a sheet in `E-104/2` and `E-104.2`. */
function beginningsOf(word: string): string[] {
  const before = /^(.*\p{N})[./]\d+$/u.exec(word)?.[1]
  return before === undefined ? [word] : [word, before]
}

/** With letters and three digits, or with six digits in groups, it is hardly anything else. */
function isDistinct(word: string): boolean {
  const digits = word.replace(/\D/g, '').length
  return /\p{L}/u.test(word) ? digits >= 3 : digits >= 6 && /\d\D\d/.test(word)
}

function isOneSlipFrom(numbers: ReadonlySet<string>, word: string): boolean {
  if (word.length < 5) return false
  for (const number of numbers) if (number.length > 4 && editDistance(word, number, 1) <= 1) return true
  return false
}

/** `alarm 100 ms after the start`, `part 12 of the standard`: a plain number with a unit, or a small one. */
const isAmount = (word: string, after: string) =>
  /^\d+([.,/]\d+)?$/.test(word) && (word.length < 3 || isUnit(/^ ?([^\s,.;)]*)/u.exec(after)?.[1] ?? ''))

/** Letters and signs as they are, each digit as `#`: `E-104` is `E-###`. */
const formOf = (word: string) => word.replace(/\d/g, '#')

const startOf = (word: string) => /^\D*\d?/.exec(word)?.[0] ?? ''
