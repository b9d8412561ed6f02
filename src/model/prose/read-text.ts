import type { Sentence } from '../../reading/block.ts'
import { sentencesOf } from '../../reading/sentences.ts'
import { rememberedOfTwo } from '../../source/once.ts'
import { type AnyPage, type LinkedMachine, type PageText, textsOf } from '../machine.ts'
import { type ReadingBlock, readingBlocks } from './reading-blocks.ts'

/** A text in one language, in the blocks and sentences in which it is read. */
export interface ReadText {
  language: string
  blocks: readonly { block: ReadingBlock; sentences: readonly Sentence[] }[]
}

/** A text of a page. */
export interface ReadPage extends ReadText {
  page: AnyPage
  text: PageText
}

/** Every text of the pages, in every language, in the order of the pages. */
export function readPages({ pages, terms }: Pick<LinkedMachine, 'pages' | 'terms'>): ReadPage[] {
  return pages.flatMap((page) => textsOf(page).map((text) => readPage(page, text, terms)))
}

/** A text of a page. It is read once for the terms of a glossary. */
export function readPage(page: AnyPage, text: PageText, terms: LinkedMachine['terms']): ReadPage {
  return { page, text, ...readWith(terms, text) }
}

const readWith = rememberedOfTwo((terms: LinkedMachine['terms'], text: PageText): ReadText => {
  const termOf = (id: string) => terms.find((term) => term.id === id)?.byLanguage[text.language]?.term
  return readBlocks(readingBlocks(text, termOf), text.language)
})

export function readBlocks(blocks: readonly ReadingBlock[], language: string): ReadText {
  return { language, blocks: blocks.map((block) => ({ block, sentences: sentencesOf(block, language) })) }
}
