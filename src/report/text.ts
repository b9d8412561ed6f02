import type { Finding } from '../source/finding.ts'
import type { Place } from '../source/place.ts'
import { frame } from './frame.ts'
import { firstLine } from './short.ts'

/** How much was checked, for the last line of a report. */
export interface Summary {
  errors: number
  warnings: number
  notes: number
  [counted: string]: number
}

/** Findings as a person reads them: first line, the author's text with carets, second places, facts, advice. */
export function reportText(findings: readonly Finding[], texts: ReadonlyMap<string, string>, summary: Summary): string {
  return `${findings.map((finding) => `${reportFinding(finding, texts)}\n\n`).join('')}${summaryLine(summary)}\n`
}

export function reportFinding(finding: Finding, texts: ReadonlyMap<string, string>): string {
  const framed = (place: Place) => frame(texts.get(place.file), place)
  const own = framed(finding.place)
  const parts = [own ? `${firstLine(finding)}\n\n${own}` : firstLine(finding)]
  for (const { label, place } of finding.related ?? []) {
    const second = framed(place)
    parts.push(`  ${place.file}:${place.line}:${place.column}: ${label}${second ? `\n\n${second}` : ''}`)
  }
  const said = [...(finding.note ? [`  note: ${finding.note}`] : []), ...(finding.help ? [`  help: ${finding.help}`] : [])]
  if (said.length > 0) parts.push(said.join('\n'))
  return parts.join('\n\n')
}

function summaryLine({ errors, warnings, notes, ...counted }: Summary): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`
  const checked = Object.entries(counted).map(([name, number]) => count(number, name.replace(/s$/, '')))
  const found = [count(errors, 'error'), count(warnings, 'warning'), ...(notes > 0 ? [count(notes, 'note')] : [])].join(', ')
  return checked.length > 0 ? `${checked.join(', ')}: ${found}` : found
}
