import type { Counts } from './counts.ts'
import { ofLanguage } from './language/of-language.ts'
import { type MeasureName, measuresOf, type NoProse } from './measures.ts'

/**
 * From here on a level says something about the text. The standard deviation between samples of one document (61,606 words of open technical prose,
 * Flesch–Kincaid) is 3.2 grades at 50 words, 2.5 at 100, 2.2 at 150, 2.0 at 200 and 1.6 at 400; that of FORCAST is a third of it.
 */
export const reliableFromWords = 100
/** From here on a level is held against the limit of its readers. */
export const enforcedFromWords = 150

/**
 * What the number means. `grade`: school years of the United States, as the limits are; `school-year`: of another country; `ease`: 100 is
 * easy, 0 hard; `lix`: 20 is easy, 60 hard.
 */
export type Scale = 'grade' | 'school-year' | 'ease' | 'lix'

export interface Level {
  measure: MeasureName
  scale: Scale
  /** Unrounded; a report shows one decimal. */
  value: number
  reliable: boolean
  /** Whether it is held against the limit of its readers, where they have one. */
  enforced: boolean
}

/**
 * The measure that stands for a language: Flesch–Kincaid as military technical manuals take it, the first Wiener formula since it counts in
 * school years, the scale of INFLESZ as Spanish health texts take it, Kandel–Moles and Gulpease as the usual ones of their languages.
 */
const leading: Readonly<Record<string, readonly [MeasureName, Scale]>> = {
  en: ['fleschKincaidGrade', 'grade'],
  de: ['wiener1', 'school-year'],
  es: ['szigrisztPazos', 'ease'],
  fr: ['kandelMoles', 'ease'],
  it: ['gulpease', 'ease'],
}

/** The level of a text, by the measure of its language and never by that of another; LIX where the language has none. */
export function levelOf(counts: Counts, language: string): Level | NoProse {
  const measures = measuresOf(counts, language)
  if ('none' in measures) return measures
  const [measure, scale] = ofLanguage(leading, language) ?? ['lix', 'lix']
  const value = measures[measure]
  if (value === undefined) return { none: 'no prose' }
  const reliable = counts.words >= reliableFromWords
  return { measure, scale, value, reliable, enforced: counts.words >= enforcedFromWords }
}

/** Whether a level is beyond the limit of its readers, on its own scale: unrounded, and a level at the limit is fine. */
export const isTooHard = ({ enforced, scale, value }: Level, limit: number): boolean => enforced && (scale === 'ease' ? value < limit : value > limit)
