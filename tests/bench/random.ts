/** Numbers that look random and are the same in every run: mulberry32, public domain, from memory. */
export interface Random {
  /** A whole number from 0 to below `limit`. */
  below(limit: number): number
  /** One of the values; undefined when there is none. */
  pick<T>(values: readonly T[]): T | undefined
  /** Up to `count` of the values, each once, in a random order. */
  sample<T>(values: readonly T[], count: number): T[]
}

export function seededRandom(seed: number): Random {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (limit: number) => Math.floor(next() * limit)
  return {
    below,
    pick: (values) => values[below(values.length)],
    sample(values, count) {
      const left = [...values]
      return Array.from({ length: Math.min(count, left.length) }, () => left.splice(below(left.length), 1)).flat()
    },
  }
}
