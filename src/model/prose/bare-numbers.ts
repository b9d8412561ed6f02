import type { BareTag } from './bare-tags.ts'
import type { NumberMention, ReadNumbers } from './number-reader.ts'
import type { Prose } from './prose.ts'

/** A drawing, part or alarm that words speak of without an element, and the words. */
export interface BareNumber {
  prose: Prose
  mention: NumberMention
}

/** Every bare number in some words; what has been read as a tag is one. */
export function bareNumbers(words: readonly Prose[], tags: readonly BareTag[], read: ReadNumbers): BareNumber[] {
  const tagsIn = Map.groupBy(tags, ({ prose }) => prose)
  return words.flatMap((prose) => {
    const taken = tagsIn.get(prose) ?? []
    const isFree = ({ start, end }: NumberMention) => !taken.some(({ mention }) => mention.start < end && start < mention.end)
    return read(prose.text)
      .filter(isFree)
      .map((mention) => ({ prose, mention }))
  })
}
