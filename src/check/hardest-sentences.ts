import type { Machine } from '../model/machine.ts'
import { levelReader, type PageLevel } from '../model/page-level.ts'
import { countedSentences } from '../reading/counts.ts'
import type { Place } from '../source/place.ts'

/** A level says little of a handful of words. */
const fewestWords = 6

/** The sentences of a page that are the hardest by the measure of its language, the hardest first; of equal ones the first on the page. */
export function hardestSentences({ blocks, language, reader, level }: PageLevel, machine: Machine, count = 3): { value: number; place: Place }[] {
  const levelFor = levelReader(machine)
  const sentences = blocks.flatMap(({ block, sentences }) =>
    countedSentences(sentences).flatMap((sentence) => {
      if (sentence.tokens.length < fewestWords) return []
      const alone = levelFor({ language, blocks: [{ block, sentences: [sentence] }] }, reader).level
      return alone ? [{ value: alone.value, place: block.place(sentence.start, sentence.end) }] : []
    }),
  )
  const sign = level?.scale === 'ease' ? 1 : -1
  return sentences.sort((a, b) => sign * (a.value - b.value)).slice(0, count)
}
