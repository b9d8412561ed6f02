import { en } from './en.ts'
import { es } from './es.ts'

/** Every text that the site itself says, in one language. A new language is one more file with these keys. */
export type Labels = { readonly [K in keyof typeof en]: string }

const dictionaries: Readonly<Record<string, Labels>> = { en, es }

/** Every language that the site has labels for. */
export const labelledLanguages: readonly string[] = Object.keys(dictionaries)

/** The labels of a language. Undefined for a language that has none yet. */
export function labelsOf(language: string): Labels | undefined {
  return dictionaries[language]
}

/** What a language calls itself, or its letters. */
export function languageName(language: string): string {
  return labelsOf(language)?.languageName ?? language
}
