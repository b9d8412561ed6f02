import { seededRandom as numbersOf } from '../../src/training/random.ts'

/** What is drawn by numbers that look random and are the same in every run. */
export interface Random {
  /** A whole number from 0 to below `limit`. */
  below(limit: number): number
  /** One of the values; undefined when there is none. */
  pick<T>(values: readonly T[]): T | undefined
  /** Up to `count` of the values, each once, in a random order. */
  sample<T>(values: readonly T[], count: number): T[]
}

export function seededRandom(seed: number): Random {
  const next = numbersOf(seed)
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
