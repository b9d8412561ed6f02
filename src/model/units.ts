import { compare } from '../source/place.ts'

/** Equal for units with the same options, in whatever order machine.yaml lists them: they are one machine. */
export function optionsKey(fitted: readonly string[]): string {
  return JSON.stringify([...new Set(fitted)].sort(compare))
}
