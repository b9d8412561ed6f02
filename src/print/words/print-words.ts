import { en } from './en.ts'
import { es } from './es.ts'

/** What paper says besides the pages, in one language. */
export type PrintWords = { readonly [K in keyof typeof en]: string }

const dictionaries: Readonly<Record<string, PrintWords>> = { en, es }

/** Undefined for a language that has none yet. */
export function printWords(language: string): PrintWords | undefined {
  return dictionaries[language]
}
