import type { Machine } from '../model/machine.ts'
import { type Options, UsageError } from './options.ts'

/** The language that was asked for, else the source language. A UsageError for one that the machine is not in. */
export function languageOf({ languages, sourceLanguage }: Machine, options: Options): string {
  const language = options.get('language') ?? sourceLanguage
  if (!languages.includes(language)) throw new UsageError(`the machine is in ${languages.join(', ')}, not in \`${language}\``)
  return language
}
