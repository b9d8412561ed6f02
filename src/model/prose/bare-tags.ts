import type { LinkedMachine } from '../machine.ts'
import type { Prose } from './prose.ts'
import { type Mention, tagReader } from './tag-reader.ts'

/** A device that words speak of without an element, and the words. */
export interface BareTag {
  prose: Prose
  mention: Mention
}

/** Every bare tag in some words. None where the device list could not be read. */
export function bareTags(machine: LinkedMachine, words: readonly Prose[]): BareTag[] {
  if (machine.unread.has('tag')) return []
  const read = tagReader(machine)
  return words.flatMap((prose) => read(prose.text).map((mention) => ({ prose, mention })))
}
