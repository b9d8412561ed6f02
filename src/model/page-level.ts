import { type Counts, countedSentences, sentenceCounter } from '../reading/counts.ts'
import { isTooHard, type Level, levelOf } from '../reading/level.ts'
import { remembered, rememberedOf, rememberedOfTwo } from '../source/once.ts'
import type { LinkedMachine } from './machine.ts'
import type { ReadPage, ReadText } from './prose/read-text.ts'
import { type ReadingLimit, readerOf, readingLimit } from './reading-limit.ts'
import type { Reader } from './schema/common.ts'
import type { MachineFile } from './schema/machine-file.ts'

/** How hard a text is to read, beside what its reader is meant to take. */
export interface TextLevel {
  reader: Reader
  counts: Counts
  /** Undefined where the text holds no prose: a table or a drawing alone. */
  level: Level | undefined
  /** Undefined where no measure of the language is held against a limit. */
  limit: ReadingLimit | undefined
  /** Held against the limit, and beyond it. */
  tooHard: boolean
}

export type PageLevel = TextLevel & ReadPage

/** Measures texts of a machine, with the words that it counts in its own way. */
export function levelReader({ file }: { file: Pick<MachineFile, 'readers' | 'ownWords'> }): (text: ReadText, reader: Reader) => TextLevel {
  const counterIn = remembered((language: string) => {
    const own = Object.entries(file.ownWords?.[language] ?? {})
    return sentenceCounter(language, new Map(own.map(([word, syllables]) => [word.toLowerCase(), syllables])))
  })
  return ({ language, blocks }, reader) => {
    const counts = counterIn(language)(blocks.flatMap(({ sentences }) => countedSentences(sentences)))
    const found = levelOf(counts, language)
    const level = 'none' in found ? undefined : found
    const limit = readingLimit({ file }, reader, language)
    return { reader, counts, level, limit, tooHard: level !== undefined && limit?.measure === level.measure && isTooHard(level, limit.value) }
  }
}

/** The level of every text of the pages. */
export function pageLevels(machine: Pick<LinkedMachine, 'file'>, pages: readonly ReadPage[]): PageLevel[] {
  return pages.map((read) => ({ ...read, ...levelIn(machine.file, read.blocks)(read, readerOf(read.page)) }))
}

const readerWith = rememberedOf((file: MachineFile) => levelReader({ file }))

/** Blocks that stay as they are are counted once for each of their readers. */
const levelIn = rememberedOfTwo((file: MachineFile, _blocks: ReadText['blocks']) => {
  const levels = new Map<Reader, TextLevel>()
  return (read: ReadText, reader: Reader): TextLevel => {
    const known = levels.get(reader) ?? readerWith(file)(read, reader)
    levels.set(reader, known)
    return known
  }
})
