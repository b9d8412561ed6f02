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
  /** A part of its data could not be read: what is empty is not known. */
  isPartial?: boolean
}

/** A tag weighs less than a text, and an address less than both, or an exchange of two is told wrongly. House values, tried on lists of 5,000 rows. */
const weights = { id: 0.3, text: 0.35, links: 0.2, kin: 0.15 }
/** Most that a text counts for that is not the same. With it a moved text, address and part weigh more than a kept tag. */
const mostOfOtherText = 0.7
/** Traits with what is compared again and again, worked out once. */
export interface Marked extends Traits {
  /** The text without case and spacing. */
  plain: string
  /** The name in its one spelling. */
  spelling: string
  /** The product aspect of the name, where it has one. */
  product: string | undefined
}

export function marked(row: Traits): Marked {
  return { ...row, plain: plainText(row.text), spelling: normalise(row.id), product: productOf(row.id) }
}

/** Scores are whole numbers, so that equal ones are equal. */
export const scale = 1_000_000
export const threshold = 0.6 * scale

/** Texts that stand once in each revision: such a text is where it stands now, and like no other. */
export function settledTexts(old: readonly Pick<Marked, 'plain'>[], now: readonly Pick<Marked, 'plain'>[]): Set<string> {
  const once = (rows: readonly Pick<Marked, 'plain'>[]) => {
    const counts = new Map<string, number>()
    for (const { plain } of rows) counts.set(plain, (counts.get(plain) ?? 0) + 1)
    return counts
  }
  const [before, after] = [once(old), once(now)]
  return new Set([...before].flatMap(([text, count]) => (text !== '' && count === 1 && after.get(text) === 1 ? [text] : [])))
}

/**
 * How sure it is that two rows are one thing, from 0 to `scale`; undefined below the threshold. What neither revision
 * says is left out of the sum. All but the name agreeing is enough, however little there is, and so is a text like no
 * other where each name is in one revision alone (`areLone`): what got a new tag often got another address with it.
 */
export function scorePair(a: Marked, b: Marked, likeness: Likeness, settled: ReadonlySet<string>, areLone = false): number | undefined {
  const sameText = a.plain !== '' && a.plain === b.plain
  const text = sameText ? 1 : settled.has(a.plain) || settled.has(b.plain) ? 0 : mostOfOtherText * likeness(a.text, b.text)
  const links = sharedLinks(a.links, b.links)
  const kin = a.kin === b.kin ? 1 : 0
  let whole = weights.id
  let sum = weights.id * idAgreement(a, b)
  const add = (weight: number, agreement: number, counts: boolean) => {
    if (!counts) return
    whole += weight
    sum += weight * agreement
  }
  // What only one revision says of a text like no other does not make it another thing.
  const isOwnText = sameText && settled.has(a.plain)
  const hasText = isSaid(a, b, ({ plain }) => plain !== '')
  const hasLinks = isSaid(a, b, ({ links }) => links.length > 0, isOwnText)
  const hasKin = isSaid(a, b, ({ kin }) => kin !== '', isOwnText)
  add(weights.text, text, hasText)
  add(weights.links, links, hasLinks)
  add(weights.kin, kin, hasKin)
  const score = Math.round((scale * sum) / whole)
  const allButName = sameText && (links === 1 || !hasLinks) && (kin === 1 || !hasKin)
  return score >= threshold || allButName || (isOwnText && areLone) ? score : undefined
}

/** Whether at least one of two says something, and neither has it where it could not be read. */
function isSaid(a: Marked, b: Marked, says: (row: Marked) => boolean, byBoth = false): boolean {
  const [one, other] = [says(a), says(b)]
  if (byBoth) return one && other
  return (one || other) && (one || !a.isPartial) && (other || !b.isPartial)
}

/** How many of the facts around a thing agree, and then how near the names are in order. */
export function closeness(a: Traits, b: Traits): number {
  return a.around.filter((value, index) => value !== '' && value === b.around[index]).length
}

function idAgreement(a: Marked, b: Marked): number {
  if (a.id === b.id) return 1
  if (a.spelling === b.spelling) return 0.95
  return a.product !== undefined && a.product === b.product ? 0.5 : 0
}

/** The product aspect of a designation with others around it: `-B10` of `+C2-B10`; it stays when the thing is moved. */
function productOf(tag: string): string | undefined {
  if (!/^[=+]/.test(tag)) return undefined
  const read = parseIec81346(tag)
  if ('reason' in read || read.aspects.length < 2) return undefined
  return read.aspects.find(({ prefix }) => prefix === '-')?.parts.join('.')
}

function sharedLinks(a: readonly string[], b: readonly string[]): number {
  if (a.length === 1 && b.length === 1) return a[0] === b[0] ? 1 : 0
  const other = new Set(b)
  const both = new Set(a.filter((link) => other.has(link))).size
  const all = new Set([...a, ...b]).size
  return all === 0 ? 0 : both / all
}
