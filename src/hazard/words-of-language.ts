import type { SignalWord } from './signal-word.ts'

export type WordTable = Readonly<Record<SignalWord, string>>

/**
 * The four signal words of a language; undefined for a language without a table. They are fixed terms: a free
 * translation moves the level, as French ATTENTION is CAUTION and not WARNING.
 */
export function wordsOfLanguage(language: string): WordTable | undefined {
  return Object.hasOwn(tables, language) ? tables[language] : undefined
}

/**
 * Sources: English ANSI Z535.6 and ISO 3864-2; German as printed on labels to ISO 3864-2; French and Italian from
 * one secondary text each, AVIS from memory; Spanish from memory, as commonly printed in Europe.
 */
const tables: Readonly<Record<string, WordTable>> = {
  de: { danger: 'GEFAHR', warning: 'WARNUNG', caution: 'VORSICHT', notice: 'HINWEIS' },
  en: { danger: 'DANGER', warning: 'WARNING', caution: 'CAUTION', notice: 'NOTICE' },
  es: { danger: 'PELIGRO', warning: 'ADVERTENCIA', caution: 'ATENCIÓN', notice: 'AVISO' },
  fr: { danger: 'DANGER', warning: 'AVERTISSEMENT', caution: 'ATTENTION', notice: 'AVIS' },
  it: { danger: 'PERICOLO', warning: 'AVVERTENZA', caution: 'ATTENZIONE', notice: 'AVVISO' },
}

/** Languages whose signal words are known, in code-unit order. */
export const languagesWithWords: readonly string[] = Object.keys(tables)
