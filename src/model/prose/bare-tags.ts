import type { Prose } from './prose.ts'
import type { Mention, ReadTags } from './tag-reader.ts'

/** A device that words speak of without an element, and the words. */
export interface BareTag {
  prose: Prose
  mention: Mention
}

/** Every bare tag in some words. */
export function bareTags(words: readonly Prose[], read: ReadTags): BareTag[] {
  return words.flatMap((prose) => read(prose.text).map((mention) => ({ prose, mention })))
}
