import { normalise } from '../model/designation.ts'
import { editDistance } from '../model/edit-distance.ts'

/** What another program may ask for: `lookup.html?alarm=217`. */
export const lookupKinds = ['alarm', 'tag', 'part', 'drawing', 'lockout'] as const
export type LookupKind = (typeof lookupKinds)[number]

/** A thing that can be asked for, with the link to its page. */
export interface LookupEntry {
  kind: LookupKind
  name: string
  /** What it is, in the language of the page. */
  said: string
  href: string
}

export interface LookupAnswer {
  /** The one thing that is meant; undefined where none is, or several may be. */
  found: LookupEntry | undefined
  /** Things that may be meant, the nearest first. */
  near: LookupEntry[]
}

/** How many things are offered where none is the one. */
const mostNear = 12

/**
 * What a program asks for by kind and name. An alarm is known by its number alone: `217`, `0217` and `A0217` are one,
 * where only one alarm has that number. Otherwise names are the same as `normalise` has them.
 */
export function lookUp(entries: readonly LookupEntry[], kind: LookupKind, asked: string): LookupAnswer {
  const own = entries.filter((entry) => entry.kind === kind)
  const wanted = normalise(asked)
  const same = own.filter(({ name }) => name === asked.trim())
  const alike = same.length > 0 ? same : own.filter(({ name }) => normalise(name) === wanted)
  const byNumber =
    alike.length === 0 && kind === 'alarm' && /^\d+$/.test(wanted) ? own.filter(({ name }) => numberIn(name) === Number(wanted)) : alike
  const [only, ...others] = byNumber
  if (only && others.length === 0) return { found: only, near: [] }
  return { found: undefined, near: byNumber.length > 1 ? byNumber.slice(0, mostNear) : nearest(own, wanted) }
}

function nearest(own: readonly LookupEntry[], wanted: string): LookupEntry[] {
  const number = numberIn(wanted)
  const scored = own.flatMap((entry) => {
    const name = normalise(entry.name)
    const own = numberIn(name)
    // Alarms that stand beside each other in the list are often of one area.
    if (entry.kind === 'alarm' && own !== undefined && number !== undefined)
      return Math.abs(own - number) <= 5 ? [{ entry, score: Math.abs(own - number) }] : []
    if (wanted.length > 1 && (name.startsWith(wanted) || wanted.startsWith(name))) return [{ entry, score: 0 }]
    const slips = editDistance(name, wanted, 2)
    return wanted.length > 2 && slips <= 2 ? [{ entry, score: slips }] : []
  })
  const beginning = scored.filter(({ score }) => score === 0)
  return (beginning.length > 0 ? beginning : scored)
    .sort((a, b) => a.score - b.score || (a.entry.name < b.entry.name ? -1 : 1))
    .slice(0, mostNear)
    .map(({ entry }) => entry)
}

function numberIn(name: string): number | undefined {
  const digits = /^\D*(\d+)$/.exec(name)?.[1]
  return digits === undefined ? undefined : Number(digits)
}
