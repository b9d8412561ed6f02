import type { AnyPage, Machine } from '../model/machine.ts'
import { textsOf } from '../model/machine.ts'
import { locatedProse } from '../model/prose/prose.ts'
import { type ReadingBlock, readingBlocks } from '../model/prose/reading-blocks.ts'
import type { Sentence } from '../reading/block.ts'
import { sentencesOf } from '../reading/sentences.ts'
import { perMachine } from './per-machine.ts'

/** A text in one language, in the blocks and sentences in which it is read. Without a page: the messages of hazards.yaml. */
export interface ReadText {
  page: AnyPage | undefined
  language: string
  blocks: readonly { block: ReadingBlock; sentences: readonly Sentence[] }[]
}

/** Every text that readers are given to read, in every language. */
export const readTexts = perMachine((machine: Machine): readonly ReadText[] => {
  const read = (page: AnyPage | undefined, language: string, blocks: readonly ReadingBlock[]): ReadText => ({
    page,
    language,
    blocks: blocks.map((block) => ({ block, sentences: sentencesOf(block, language) })),
  })
  return [
    ...machine.pages.flatMap((page) => textsOf(page).map((text) => read(page, text.language, readingBlocks(text, termIn(machine, text.language))))),
    ...[...hazardBlocks(machine)].map(([language, blocks]) => read(undefined, language, blocks)),
  ]
})

/** The words of a glossary term in a language. */
export function termIn({ terms }: Pick<Machine, 'terms'>, language: string): (id: string) => string | undefined {
  return (id) => terms.find((term) => term.id === id)?.byLanguage[language]?.term
}

function hazardBlocks({ hazards = [] }: Machine): Map<string, ReadingBlock[]> {
  const blocks = new Map<string, ReadingBlock[]>()
  for (const { message } of hazards)
    for (const words of message ? [message.hazard, message.consequence, message.avoid] : [])
      for (const [language, said] of Object.entries(words)) {
        const { text, place } = locatedProse(said, language, 'data')
        blocks.set(language, [...(blocks.get(language) ?? []), { kind: 'message', text, place }])
      }
  return blocks
}
