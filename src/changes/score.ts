import { normalise, parseIec81346 } from '../model/designation.ts'
import { type Likeness, plainText } from './likeness.ts'

/** What tells one thing from another, in both revisions. Empty where the data says nothing. */
export interface Traits {
  /** Tag, part number, alarm number. */
  id: string
  text: string
  /** Addresses of a device, devices of an alarm, the maker's number of a part. */
  links: readonly string[]
  /** Part of a device, reaction of an alarm, maker of a part. */
  kin: string
  /** What decides between pairs that are otherwise as good: area, place, drawing. */
  around: readonly string[]
}

/** A tag weighs less than a text, and an address less than both, or an exchange of two is told wrongly. House values, tried on lists of 5,000 rows. */
const weights = { id: 0.3, text: 0.35, links: 0.2, kin: 0.15 }
/** Most that a text counts for that is not the same. With it a moved text, address and part weigh more than a kept tag. */
const mostOfOtherText = 0.7
/** Scores are whole numbers, so that equal ones are equal. */
export const scale = 1_000_000
export const threshold = 0.6 * scale

/** Texts that stand once in each revision: such a text is where it stands now, and like no other. */
export function settledTexts(old: readonly Traits[], now: readonly Traits[]): Set<string> {
  const once = (rows: readonly Traits[]) => {
    const counts = new Map<string, number>()
    for (const { text } of rows) counts.set(plainText(text), (counts.get(plainText(text)) ?? 0) + 1)
    return counts
  }
  const [before, after] = [once(old), once(now)]
  return new Set([...before].flatMap(([text, count]) => (text !== '' && count === 1 && after.get(text) === 1 ? [text] : [])))
}

/**
 * How sure it is that two rows are one thing, from 0 to `scale`; undefined below the threshold. What neither revision
 * says is left out of the sum. All but the name agreeing is enough, however little there is.
 */
export function scorePair(a: Traits, b: Traits, likeness: Likeness, settled: ReadonlySet<string>): number | undefined {
  const sameText = a.text !== '' && plainText(a.text) === plainText(b.text)
  const moved = !sameText && (settled.has(plainText(a.text)) || settled.has(plainText(b.text)))
  const parts = [
    { weight: weights.id, agreement: idAgreement(a.id, b.id) },
    {
      weight: weights.text,
      agreement: sameText ? 1 : moved ? 0 : mostOfOtherText * likeness(a.text, b.text),
      absent: a.text === '' && b.text === '',
    },
    { weight: weights.links, agreement: sharedLinks(a.links, b.links), absent: a.links.length === 0 && b.links.length === 0 },
    { weight: weights.kin, agreement: a.kin === b.kin ? 1 : 0, absent: a.kin === '' && b.kin === '' },
  ].filter(({ absent }) => !absent)
  const whole = parts.reduce((sum, { weight }) => sum + weight, 0)
  const score = Math.round((scale * parts.reduce((sum, { weight, agreement }) => sum + weight * agreement, 0)) / whole)
  const allButName = sameText && parts.slice(1).every(({ agreement }) => agreement === 1)
  return score >= threshold || allButName ? score : undefined
}

/** How many of the facts around a thing agree, and then how near the names are in order. */
export function closeness(a: Traits, b: Traits): number {
  return a.around.filter((value, index) => value !== '' && value === b.around[index]).length
}

function idAgreement(a: string, b: string): number {
  if (a === b) return 1
  if (normalise(a) === normalise(b)) return 0.95
  const product = productOf(a)
  return product !== undefined && product === productOf(b) ? 0.5 : 0
}

/** The product aspect of a designation with others around it: `-B10` of `+C2-B10`; it stays when the thing is moved. */
export function productOf(tag: string): string | undefined {
  if (!/^[=+]/.test(tag)) return undefined
  const read = parseIec81346(tag)
  if ('reason' in read || read.aspects.length < 2) return undefined
  return read.aspects.find(({ prefix }) => prefix === '-')?.parts.join('.')
}

function sharedLinks(a: readonly string[], b: readonly string[]): number {
  const other = new Set(b)
  const both = new Set(a.filter((link) => other.has(link))).size
  const all = new Set([...a, ...b]).size
  return all === 0 ? 0 : both / all
}
