import { rememberedOf } from '../../source/once.ts'
import { frontmatterTexts } from '../frontmatter-texts.ts'
import { type AnyPage, type LinkedMachine, textsOf } from '../machine.ts'
import { translatable } from '../schema/pages.ts'
import type { Words } from '../words.ts'
import { blocksOf } from './blocks.ts'
import { dataWords } from './data-words.ts'
import { locatedProse, type Prose } from './prose.ts'

/**
 * All that writers wrote for a reader: pages in every language, and the words of the data. Not the bill of
 * materials, which names trade goods. A page or a value that several units share gives the same prose for each.
 */
export function proseReader(): (machine: LinkedMachine) => Prose[] {
  const ofPage = rememberedOf((page: AnyPage) => [...pageProse(page)])
  const ofWords = rememberedOf((words: Words) => [...wordsProse(words)])
  return (machine) => [...machine.pages.flatMap(ofPage), ...[...dataWords(machine)].flatMap(ofWords)]
}

function* pageProse(page: AnyPage): Iterable<Prose> {
  for (const text of textsOf(page)) yield* blocksOf(text, page)
  yield* frontmatterProse(page, page.language, page.frontmatter, page.placeOf)
  for (const [language, { frontmatter, placeOf }] of page.translations) yield* frontmatterProse(page, language, frontmatter, placeOf)
}

/** What a translation may render is what a reader reads. */
const wordKeys = new Set<string>(translatable)

function* frontmatterProse(page: AnyPage, language: string, frontmatter: object, placeOf: AnyPage['placeOf']): Iterable<Prose> {
  for (const [key, value] of Object.entries(frontmatter)) {
    if (!wordKeys.has(key)) continue
    for (const { path, text } of frontmatterTexts(key, value)) {
      const place = placeOf(path)
      yield { ...locatedProse({ value: text, place }, language, 'frontmatter'), page }
    }
  }
}

function* wordsProse(words: Words): Iterable<Prose> {
  for (const [language, located] of Object.entries(words)) yield locatedProse(located, language, 'data')
}
