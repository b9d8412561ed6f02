import type { Finding } from '../source/finding.ts'

/** The first line of a finding: what problem matchers of editors and CI read. */
export function firstLine({ place, severity, message, rule }: Finding): string {
  return `${place.file}:${place.line}:${place.column}: ${severity}: ${message} [${rule}]`
}

export function reportShort(findings: readonly Finding[]): string {
  return findings.map((finding) => `${firstLine(finding)}\n`).join('')
}
