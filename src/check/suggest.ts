import { normalise } from '../model/designation.ts'
import { compare } from '../source/place.ts'

export interface Suggestion {
  /** The one name that differs only in case, separators, leading zeros or O for 0. */
  same?: string
  /** Up to three names, nearest first. Never a basis for an automatic fix: tags come in series. */
  near: string[]
}

/** Tells what an author may have meant by a name that is not among the known ones. */
export type Suggest = (written: string) => Suggestion

/** A longer text is no name with a slip in it. */
const longestName = 100

/** Prepares suggestions from names. Their order does not matter. */
export function suggestFrom(known: Iterable<string>): Suggest {
  const names = [...new Set(known)].sort(compare).map((name) => ({ name, key: normalise(name), upper: name.toUpperCase() }))
  return (written) => {
    const key = normalise(written)
    const same = names.filter((it) => it.key === key).map(({ name }) => name)
    if (same.length === 1 && same[0] !== undefined) return { same: same[0], near: [] }
    if (same.length > 1) return { near: same.slice(0, 3) }
    if (written.length > longestName) return { near: [] }
    const upper = written.toUpperCase()
    const most = upper.length < 5 ? 1 : 2
    const near: { name: string; edits: number }[] = []
    for (const it of names) {
      if (Math.abs(it.upper.length - upper.length) > most) continue
      const edits = editDistance(upper, it.upper, most)
      if (edits <= most) near.push({ name: it.name, edits })
    }
    near.sort((a, b) => a.edits - b.edits || compare(a.name, b.name))
    return { near: near.slice(0, 3).map(({ name }) => name) }
  }
}

/** Advice for a name that nothing has: certain, a list of names to choose from, or what else to do. */
export function advice({ same, near }: Suggestion, noun: string, otherwise: string, beforeChoosing?: string): string {
  if (same !== undefined) return `write \`${same}\`: it differs only in spelling`
  const [first, ...others] = near.map((name) => `\`${name}\``)
  if (first === undefined) return otherwise
  const list = others.length === 0 ? `the nearest ${noun} is ${first}` : `the nearest ${noun}s are ${[first, ...others].join(', ')}`
  return beforeChoosing ? `${list}: ${beforeChoosing}` : list
}

/**
 * How many slips lead from one text to the other: a character too many, too few, wrong, or two neighbours
 * swapped (optimal string alignment). `limit + 1` stands for any higher number.
 */
export function editDistance(a: string, b: string, limit: number): number {
  let twoAgo: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    let least = i
    for (let j = 1; j <= b.length; j++) {
      const wrong = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, wrong)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, (twoAgo[j - 2] ?? 0) + 1)
      row.push(best)
      if (best < least) least = best
    }
    if (least > limit) return limit + 1
    twoAgo = last
    last = row
  }
  return Math.min(last[b.length] ?? 0, limit + 1)
}
