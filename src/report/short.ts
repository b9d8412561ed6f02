import type { Finding } from '../source/finding.ts'
import type { Place } from '../source/place.ts'
import { oneLine } from './visible.ts'

/** The first line of a finding: what problem matchers of editors and CI read. */
export function firstLine({ place, severity, message, rule }: Finding): string {
  return `${where(place)}: ${severity}: ${inCell(place)}${oneLine(message)} [${rule}]`
}

/** The cell of a workbook, to stand before what is said of it: `Parts!C7: `. Empty for a place in a text. */
export function inCell({ cell }: Place): string {
  return cell === undefined ? '' : `${oneLine(cell)}: `
}

/** A place as compilers write it: `file:line:column`. */
export function where({ file, line, column }: Place): string {
  return `${oneLine(file)}:${line}:${column}`
}

export function reportShort(findings: readonly Finding[]): string {
  return findings.map((finding) => `${firstLine(finding)}\n`).join('')
}
