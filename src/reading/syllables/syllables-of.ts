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

/**
 * Syllables of a word, at least 1; `undefined` for a language without a counter. The parts of a hyphenated word are added; a number in it is one.
 * `own` is asked first, for the word and for each of its parts.
 */
export function syllablesOf(word: string, language: string, own: OwnWords = noWords): number | undefined {
  const count = ofLanguage(counters, language)
  return count && syllablesWith(count, partOf(language), own, word)
}

/** `syllablesOf` for many words: a word that comes again is not counted anew. */
export function syllableCounter(language: string, own: OwnWords = noWords): ((word: string) => number) | undefined {
  const count = ofLanguage(counters, language)
  if (!count) return undefined
  const known = new Map<string, number>()
  return (word) => {
    const syllables = known.get(word) ?? syllablesWith(count, partOf(language), own, word)
    known.set(word, syllables)
    return syllables
  }
}

function syllablesWith(count: (word: string) => number, part: RegExp, own: OwnWords, word: string): number {
  const text = word
    .replace(/[\u00AD\u200B]/g, '')
    .normalize('NFC')
    .toLowerCase()
  const syllables = (text.match(part) ?? []).map((piece) => own.get(piece) ?? (/\d/.test(piece) ? 1 : count(piece)))
  return (
    own.get(text) ??
    Math.max(
      1,
      syllables.reduce((sum, its) => sum + its, 0),
    )
  )
}

const partOf = (language: string) => (baseLanguage(language) === 'en' ? englishPart : otherPart)
const englishPart = /\d+|[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]+)?/gu
/** An elided word has no vowel of its own: `l’eau`. */
const otherPart = /\d+|(?:\p{L}{1,2}['’])?[\p{L}\p{M}]+/gu
