import type { Finding } from '../source/finding.ts'
import { framesOf } from './frame.ts'
import { reportFinding } from './text.ts'

/** How hard a file is to read, and what is found about its wording. Values are unrounded. */
export interface ReadingFile {
  file: string
  language: string
  reader: string
  words: number
  sentences: number
  /** Null where the syllables of the language cannot be counted. */
  syllables: number | null
  /** Name -> value. Empty where there is no prose. */
  measures: Readonly<Record<string, number>>
  /** Measures that are scaled up from fewer words or sentences than their method asks for. */
  scaled: readonly string[]
  /** The measure that stands for the language; null where there is no prose. */
  level: { measure: string; value: number; limit: number | null; reliable: boolean; enforced: boolean; tooHard: boolean } | null
  findings: readonly Finding[]
}

const names: Readonly<Record<string, string>> = {
  fleschKincaidGrade: 'Flesch-Kincaid grade',
  forcast: 'FORCAST',
  fleschEase: 'Flesch ease',
  gunningFog: 'Gunning fog',
  smog: 'SMOG',
  colemanLiau: 'Coleman-Liau',
  ari: 'ARI',
  lix: 'LIX',
  rix: 'RIX',
  szigrisztPazos: 'Szigriszt-Pazos (INFLESZ)',
  fernandezHuerta: 'Fernández Huerta',
  amstad: 'Amstad',
  kandelMoles: 'Kandel-Moles',
  gulpease: 'Gulpease',
  wiener1: 'Wiener Sachtextformel 1',
  wiener2: 'Wiener Sachtextformel 2',
  wiener3: 'Wiener Sachtextformel 3',
  wiener4: 'Wiener Sachtextformel 4',
}

const nameOf = (measure: string) => names[measure] ?? measure

/** The contract of `--format json`: fields are added, never renamed. */
export function readingJson(files: readonly ReadingFile[]): string {
  const records = files.map(({ findings, ...file }) => ({
    ...file,
    findings: findings.map(({ rule, severity, message, place, help }) => ({ rule, severity, message, ...place, help: help ?? null })),
  }))
  return `${JSON.stringify({ files: records }, null, 2)}\n`
}

/** Each file with its counts and measures, then what is found in it. */
export function readingText(files: readonly ReadingFile[], texts: ReadonlyMap<string, string>): string {
  const frameOf = framesOf(texts)
  return files
    .flatMap((file) => [`${headOf(file)}\n`, ...file.findings.map((finding) => `${reportFinding(finding, frameOf)}\n`)])
    .map((part) => `${part}\n`)
    .join('')
}

function headOf(file: ReadingFile): string {
  const { words, sentences, syllables } = file
  const perWord = syllables === null ? '' : `, ${fixed(syllables / words, 2)} syllables a word`
  const counts = words === 0 ? 'no prose' : `${words} words, ${sentences} sentences: ${fixed(words / sentences)} words a sentence${perWord}`
  return [`${file.file} (${file.language}, ${file.reader})`, `  ${counts}`, ...levelLines(file)].join('\n')
}

function levelLines({ level, measures, scaled }: ReadingFile): string[] {
  if (!level) return []
  const { measure, value, limit, tooHard, reliable, enforced } = level
  const held = limit === null ? 'no limit' : `limit ${limit}${tooHard ? ': too hard' : ''}`
  const short = !reliable ? '; under 100 words a level is not reliable' : !enforced ? '; under 150 words it is not held against the limit' : ''
  const others = Object.entries(measures)
    .filter(([name]) => name !== measure)
    .map(([name, it]) => `${nameOf(name)} ${fixed(it)}${scaled.includes(name) ? ' (scaled up)' : ''}`)
  return [`  ${nameOf(measure)} ${fixed(value)}, ${held}${short}`, `  ${others.join(', ')}`]
}

const fixed = (value: number, digits = 1) => value.toFixed(digits)
