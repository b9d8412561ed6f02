import { ofLanguage } from './language/of-language.ts'

/** Signal words that open a message, by language: the level of the message and no part of its sentence. */
const signalWords: Readonly<Record<string, string>> = {
  en: 'danger|warning|caution|notice|note|important|attention',
  de: 'gefahr|warnung|vorsicht|achtung|hinweis|wichtig',
  es: 'peligro|advertencia|atención|precaución|aviso|nota|importante',
  fr: 'danger|avertissement|attention|avis|remarque|note|important',
}
const stepWords: Readonly<Record<string, string>> = { en: 'step', de: 'schritt', es: 'paso', fr: 'étape' }

const patterns: Readonly<Record<string, RegExp>> = Object.fromEntries(
  Object.entries(signalWords).map(([language, words]) => {
    const marker = `\\(?(?:\\d{1,3}|[a-z])\\)\\s+|(?:\\d{1,3}|[a-z])\\.\\s+|${stepWords[language]}\\s+\\d{1,3}[.:]\\s+|[•▪–—-]\\s+`
    return [language, new RegExp(`\\s*(?:${marker})?(?:(?:${words})[:.!]\\s+)?`, 'iy')]
  }),
)

/**
 * Where the sentence that starts at `start` begins for a reader: behind a list marker (`1.`, `a)`, `Step 1.`) and a signal word (`WARNING:`).
 * What is nothing but a mark keeps its words.
 */
export function endOfLeadMark(text: string, start: number, end: number, language: string): number {
  const pattern = ofLanguage(patterns, language) ?? (patterns.en as RegExp)
  pattern.lastIndex = start
  pattern.test(text)
  return pattern.lastIndex < end ? pattern.lastIndex : start
}
