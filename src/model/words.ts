import type { Located } from '../source/place.ts'

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
