import { editDistance } from '../model/edit-distance.ts'

/** The one name that is most likely meant by a misspelt key, if any is near: same letters, or one edit apart. */
export function suggestKey(written: string, known: readonly string[]): string | undefined {
  const near = known.filter((name) => editDistance(written.toLowerCase(), name.toLowerCase(), 1) <= 1)
  return near.length === 1 ? near[0] : undefined
}
