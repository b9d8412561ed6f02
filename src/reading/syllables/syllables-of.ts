import { baseLanguage, ofLanguage } from '../language/of-language.ts'
import { englishSyllables } from './english.ts'
import { frenchSyllables } from './french.ts'
import { germanSyllables } from './german.ts'
import { spanishSyllables } from './spanish.ts'

/** Words with their syllables, in small letters: terms of a machine that the rules count wrong. */
export type OwnWords = ReadonlyMap<string, number>

const counters: Readonly<Record<string, (word: string) => number>> = {
  en: englishSyllables,
  es: spanishSyllables,
  de: germanSyllables,
  fr: frenchSyllables,
}
const noWords: OwnWords = new Map()

/** Whether the syllables of a language can be counted (`en`, `es-MX`). */
export const hasSyllables = (language: string): boolean => counterOf(language) !== undefined

const counterOf = (language: string) => ofLanguage(counters, language)

/**
 * Syllables of a word, at least 1; `undefined` for a language without a counter. The parts of a hyphenated word are added; a number in it is one.
 * `own` is asked first, for the word and for each of its parts.
 */
export function syllablesOf(word: string, language: string, own: OwnWords = noWords): number | undefined {
  const count = counterOf(language)
  if (!count) return undefined
  const text = word
    .replace(/[\u00AD\u200B]/g, '')
    .normalize('NFC')
    .toLowerCase()
  const known = own.get(text)
  if (known !== undefined) return known
  const parts = text.match(baseLanguage(language) === 'en' ? englishPart : otherPart) ?? []
  return Math.max(
    1,
    parts.reduce((sum, part) => sum + (own.get(part) ?? (/\d/.test(part) ? 1 : count(part))), 0),
  )
}

const englishPart = /\d+|[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]+)?/gu
/** An elided word has no vowel of its own: `l’eau`. */
const otherPart = /\d+|(?:\p{L}{1,2}['’])?[\p{L}\p{M}]+/gu
