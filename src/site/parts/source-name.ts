import type { Context } from '../context.ts'
import { labelsOf } from '../words/labels.ts'

/** What the language is called in which the manual was written. */
export function sourceName({ machine: { sourceLanguage } }: Pick<Context, 'machine'>): string {
  return labelsOf(sourceLanguage)?.languageName ?? sourceLanguage
}
