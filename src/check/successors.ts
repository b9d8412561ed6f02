import type { Located, Place } from '../source/place.ts'

/** A part or a drawing: something with a number that another one may replace. */
export interface Replaceable {
  readonly number: Located<string>
  readonly supersededBy: Located<string> | undefined
  readonly place: Place
}

/** What replaced a part or a drawing, the latest last. Undefined when the chain is a circle or ends at one that is not there. */
export function successorsOf<T extends Replaceable>(replaced: T, byNumber: ReadonlyMap<string, T>): T[] | undefined {
  const chain: T[] = []
  for (let { supersededBy }: Replaceable = replaced; supersededBy; supersededBy = chain.at(-1)?.supersededBy) {
    const next = byNumber.get(supersededBy.value)
    if (!next || next === replaced || chain.includes(next)) return undefined
    chain.push(next)
  }
  return chain
}

/** Parts or drawings by number. A number that is there twice is reported as such. */
export function byNumber<T extends Replaceable>(rows: readonly T[]): Map<string, T> {
  return new Map(rows.toReversed().map((row) => [row.number.value, row]))
}
