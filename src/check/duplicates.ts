import type { Problem } from '../source/finding.ts'
import type { Located } from '../source/place.ts'

/** A problem for each row whose name another row above it has, with the first use beside it. */
export function* duplicates<T>(
  rows: readonly T[],
  name: (row: T) => Located<string>,
  key: (name: string) => string,
  message: (name: string, same: boolean) => string,
  help: string,
): Iterable<Problem> {
  const first = new Map<string, Located<string>>()
  for (const row of rows) {
    const own = name(row)
    const known = first.get(key(own.value))
    if (!known) first.set(key(own.value), own)
    else
      yield {
        message: message(own.value, known.value === own.value),
        place: own.place,
        related: [{ label: known.value === own.value ? 'first used here' : `\`${known.value}\` stands here`, place: known.place }],
        help,
      }
  }
}

/** The usual message of a name that is there twice, or that differs from another only in spelling. */
export function usedTwice(noun: string): (name: string, same: boolean) => string {
  return (name, same) => (same ? `the ${noun} \`${name}\` is used twice` : `the ${noun} \`${name}\` differs from another only in spelling`)
}
