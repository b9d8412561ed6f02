import { fold } from './words.ts'

/** Words of a question that say nothing about its subject, folded. All typed words must be on a page, so these are left out. */
const fillers: Readonly<Record<string, ReadonlySet<string>>> = {
  en: new Set(
    'a an and any are at by can do does for from has have how i in is it its my of on or that the there this to was what when where which why with'.split(
      ' ',
    ),
  ),
  es: new Set('a al como con cual cuando de del donde el en es esta este hay la las lo los mi o para por que se si su un una y'.split(' ')),
}

export function isFiller(word: string, language: string): boolean {
  return fillers[language.split('-')[0] ?? '']?.has(fold(word)) ?? false
}
