/** `es` of `es-MX`. */
export const baseLanguage = (tag: string): string => (/^[a-z]+$/.test(tag) ? tag : (tag.split('-')[0]?.toLowerCase() ?? ''))

/** What a table holds for a language tag, whatever its region. */
export function ofLanguage<T>(table: Readonly<Record<string, T>>, tag: string): T | undefined {
  const base = baseLanguage(tag)
  return Object.hasOwn(table, base) ? table[base] : undefined
}
