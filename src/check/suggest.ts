import { normalise } from '../model/designation.ts'
import { editDistance } from '../model/edit-distance.ts'
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
