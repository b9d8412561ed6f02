import { normalise } from '../model/designation.ts'
import { compare } from '../source/place.ts'

export interface Suggestion {
  /** The one name that differs only in case, separators, leading zeros or O for 0. */
  same?: string
  /** Up to three names one or two edits away, nearest first. Never a basis for an automatic fix. */
  near: string[]
}

/** Finds what an author may have meant by a name. The order of the known names does not matter. */
export function suggest(written: string, known: Iterable<string>): Suggestion {
  const names = [...new Set(known)].sort(compare)
  const key = normalise(written)
  const same = names.filter((name) => normalise(name) === key)
  if (same.length === 1 && same[0] !== undefined) return { same: same[0], near: [] }
  const most = written.length < 5 ? 1 : 2
  const upper = written.toUpperCase()
  const near = names
    .filter((name) => Math.abs(name.length - written.length) <= most)
    .map((name) => ({ name, edits: editDistance(upper, name.toUpperCase(), most) }))
    .filter(({ edits }) => edits <= most)
    .sort((a, b) => a.edits - b.edits || compare(a.name, b.name))
  return { near: near.slice(0, 3).map(({ name }) => name) }
}

/** Advice for a name that nothing has: certain, a list, or what else to do. */
export function advice(written: string, known: Iterable<string>, noun: string, otherwise: string): string {
  const { same, near } = suggest(written, known)
  if (same !== undefined) return `write \`${same}\`: it differs only in spelling`
  const [first, ...others] = near.map((name) => `\`${name}\``)
  if (first === undefined) return otherwise
  return others.length === 0 ? `the nearest ${noun} is ${first}` : `the nearest ${noun}s are ${[first, ...others].join(', ')}`
}

/** Optimal string alignment distance (insert, delete, replace, swap neighbours); `limit + 1` for more. */
export function editDistance(a: string, b: string, limit: number): number {
  let twoAgo: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + cost)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, (twoAgo[j - 2] ?? 0) + 1)
      row.push(best)
    }
    if (Math.min(...row) > limit) return limit + 1
    twoAgo = last
    last = row
  }
  return last[b.length] ?? limit + 1
}
