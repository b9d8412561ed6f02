import { isaLegendOf } from '../../model/designation.ts'
import { parseIsa51 } from '../../model/isa51.ts'
import type { WordsInput } from '../../model/schema/common.ts'
import type { Context } from '../context.ts'

/** A piece of a tag with what it stands for, and the language of those words. */
export interface TagLetter {
  letters: string
  means: string
  language: string
}

/** The pieces of a loop tag in words; none where the tags of the machine are no loop tags, or the tag is none. */
export function tagLetters({ machine, labels, language }: Pick<Context, 'machine' | 'labels' | 'language'>, tag: string): TagLetter[] {
  const legend = isaLegendOf(machine.file.designation)
  const read = legend && parseIsa51(tag, legend)
  if (!read || 'reason' in read) return []
  const piece = (letters: string | undefined, means: string): TagLetter[] => (letters === undefined ? [] : [{ letters, means, language }])
  return [
    ...piece(read.unit, labels.isaUnit),
    ...read.letters.map(({ letters, means }) =>
      typeof means === 'string'
        ? { letters, means: labels[`isa_${means}`], language }
        : { letters, ...ownWords(means.own, language, machine.sourceLanguage) },
    ),
    ...piece(read.loop, labels.isaLoop),
    ...piece(read.suffix, labels.isaSuffix),
  ]
}

function ownWords(own: WordsInput, language: string, sourceLanguage: string): { means: string; language: string } {
  if (typeof own === 'string') return { means: own, language: sourceLanguage }
  const there = [language, sourceLanguage, ...Object.keys(own)].find((it) => Object.hasOwn(own, it)) ?? sourceLanguage
  return { means: own[there] ?? '', language: there }
}
