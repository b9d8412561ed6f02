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
  // A name with a line break in it is itself a slip.
  const sound = [...new Set(known)].filter((name) => !/\p{Cc}/u.test(name))
  const names = sound.sort(compare).map((name) => ({ name, upper: name.toUpperCase() }))
  const byKey = Map.groupBy(names, ({ name }) => normalise(name))
  const find: Suggest = (written) => {
    const same = (byKey.get(normalise(written)) ?? []).map(({ name }) => name)
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
  // One wrong name is often written on many pages.
  const found = new Map<string, Suggestion>()
  return (written) => {
    const suggestion = found.get(written) ?? find(written)
    found.set(written, suggestion)
    return suggestion
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
  // What the texts share at both ends needs no slip, and takes most of a tag.
  let start = 0
  let [endA, endB] = [a.length, b.length]
  while (start < endA && start < endB && a.charCodeAt(start) === b.charCodeAt(start)) start++
  while (endA > start && endB > start && a.charCodeAt(endA - 1) === b.charCodeAt(endB - 1)) {
    endA--
    endB--
  }
  let twoAgo: number[] = []
  let last: number[] = []
  for (let j = 0; j <= endB - start; j++) last.push(j)
  for (let i = 1; i <= endA - start; i++) {
    const own = a.charCodeAt(start + i - 1)
    const before = a.charCodeAt(start + i - 2)
    const row = [i]
    let least = i
    for (let j = 1; j <= endB - start; j++) {
      const other = b.charCodeAt(start + j - 1)
      let best = Math.min((last[j - 1] ?? 0) + (own === other ? 0 : 1), (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1)
      if (i > 1 && j > 1 && before === other && own === b.charCodeAt(start + j - 2)) best = Math.min(best, (twoAgo[j - 2] ?? 0) + 1)
      row.push(best)
      if (best < least) least = best
    }
    if (least > limit) return limit + 1
    twoAgo = last
    last = row
  }
  return Math.min(last[endB - start] ?? 0, limit + 1)
}
