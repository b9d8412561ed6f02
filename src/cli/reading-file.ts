import type { TextLevel } from '../model/page-level.ts'
import type { ReadText } from '../model/prose/read-text.ts'
import { measuresOf, scaledMeasures } from '../reading/measures.ts'
import type { ReadingFile } from '../report/reading.ts'
import type { Finding } from '../source/finding.ts'

/** What is reported of a text: its counts, every measure of its language, and where it stands to its limit. */
export function readingFile(
  file: string,
  { language }: ReadText,
  { reader, counts, level, limit, tooHard }: TextLevel,
  findings: readonly Finding[],
): ReadingFile {
  const measures = measuresOf(counts, language)
  return {
    file,
    language,
    reader,
    words: counts.words,
    sentences: counts.sentences,
    syllables: counts.syllables ?? null,
    measures: 'none' in measures ? {} : measures,
    scaled: 'none' in measures ? [] : scaledMeasures(counts).filter((name) => name in measures),
    level: level
      ? { measure: level.measure, value: level.value, limit: limit?.value ?? null, reliable: level.reliable, enforced: level.enforced, tooHard }
      : null,
    findings,
  }
}
