import type { AcceptedFinding } from '../check/accept.ts'
import type { Finding } from '../source/finding.ts'
import { type Frame, framesOf } from './frame.ts'
import { firstLine, inCell, where } from './short.ts'
import { oneLine } from './visible.ts'

/** How much was checked, and what was found. Named in the plural: `pages`, `devices`. */
export interface Summary {
  errors: number
  warnings: number
  notes: number
  [counted: string]: number
}

/** How much of something is there: `devices with a page`, 108 of 110. */
export interface Share {
  what: string
  have: number
  of: number
}

/**
 * Findings as a person reads them, those that are accepted, what the manual covers, and a last line that says
 * how much was checked.
 */
export function reportText(
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
  summary: Summary,
  coverage: readonly Share[] = [],
  accepted: readonly AcceptedFinding[] = [],
): string {
  const frameOf = framesOf(texts)
  return `${findings.map((finding) => `${reportFinding(finding, frameOf)}\n\n`).join('')}${acceptedLines(accepted)}${coverageLines(coverage)}${summaryLine(summary, accepted.length)}\n`
}

/** First line, the author's text with carets, second places with theirs, facts, advice. */
export function reportFinding(finding: Finding, frameOf: Frame): string {
  const parts = [firstLine(finding), frameOf(finding.place)]
  for (const { label, place } of finding.related ?? []) parts.push(`  ${where(place)}: ${inCell(place)}${oneLine(label)}`, frameOf(place))
  const { note, help } = finding
  const said = [...(note ? [`  note: ${oneLine(note)}`] : []), ...(help ? [`  help: ${oneLine(help)}`] : [])]
  return [...parts, said.join('\n')].filter(Boolean).join('\n\n')
}

function acceptedLines(accepted: readonly AcceptedFinding[]): string {
  return accepted
    .map(({ finding, acceptance: { reason, until } }) => `${firstLine(finding)}\n  accepted until ${until.value}: ${oneLine(reason)}\n\n`)
    .join('')
}

/** Shares of nothing are left out. */
function coverageLines(coverage: readonly Share[]): string {
  const told = coverage.filter(({ of }) => of > 0)
  const width = Math.max(0, ...told.map(({ what }) => what.length))
  return told.length === 0 ? '' : `${told.map(({ what, have, of }) => `${what.padEnd(width)}  ${have} of ${of}\n`).join('')}\n`
}

function summaryLine({ errors, warnings, notes, ...counted }: Summary, accepted: number): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`
  const checked = Object.entries(counted).map(([name, number]) => count(number, name.replace(/s$/, '')))
  const found = [
    count(errors, 'error'),
    count(warnings, 'warning'),
    ...(notes > 0 ? [count(notes, 'note')] : []),
    ...(accepted > 0 ? [`accepted ${accepted}`] : []),
  ].join(', ')
  return checked.length > 0 ? `${checked.join(', ')}: ${found}` : found
}
