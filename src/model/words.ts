import type { Located } from '../source/place.ts'
import type { WordsInput } from './schema/common.ts'

/** Text by language code. The source language is always there. */
export type Words = Readonly<Record<string, Located<string>>>

/** Text in one language, and which language it really is in: the source language where a translation is missing. */
export interface Spoken {
  text: string
  language: string
}

/** The text in `language`, or in the source language where it has not been translated. */
export function speak(words: Words, language: string, sourceLanguage: string): Spoken {
  const own = words[language]
  if (own) return { text: own.value, language }
  return { text: words[sourceLanguage]?.value ?? '', language: sourceLanguage }
}

/** The same for words as a frontmatter holds them: a text alone is in the language of its page. */
export function speakInput(words: WordsInput, language: string, pageLanguage: string): Spoken {
  if (typeof words === 'string') return { text: words, language: pageLanguage }
  const own = words[language]
  return own === undefined ? { text: words[pageLanguage] ?? '', language: pageLanguage } : { text: own, language }
}
