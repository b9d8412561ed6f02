import type { Hazard } from '../model/hazard.ts'
import type { Machine } from '../model/machine.ts'
import { locatedProse } from '../model/prose/prose.ts'
import { type ReadText, readBlocks } from '../model/prose/read-text.ts'
import type { ReadingBlock } from '../model/prose/reading-blocks.ts'
import { rememberedOf } from '../source/once.ts'

/** The messages of hazards.yaml as they are read, a text for each language. */
export const messagesRead = ({ hazards }: Machine): readonly ReadText[] => (hazards ? ofHazards(hazards) : [])

const ofHazards = rememberedOf((hazards: readonly Hazard[]): readonly ReadText[] => {
  const said = hazards.flatMap(({ message }) => (message ? [message.hazard, message.consequence, message.avoid] : [])).flatMap(Object.entries)
  return [...Map.groupBy(said, ([language]) => language)].map(([language, parts]) =>
    readBlocks(
      parts.map(([, words]): ReadingBlock => ({ kind: 'message', ...locatedProse(words, language, 'data') })),
      language,
    ),
  )
})
