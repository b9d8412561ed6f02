import type { Finding } from '../source/finding.ts'
import type { Share, Summary } from './text.ts'

/**
 * Findings for other programs: `{ machine, summary, findings }`, one object a finding, places from 1, end
 * exclusive, with `cell` in a workbook. `summary.coverage` lists the shares.
 */
export function reportJson(findings: readonly Finding[], machine: string | undefined, summary: Summary, coverage: readonly Share[] = []): string {
  const report = {
    machine: machine ?? null,
    summary: { ...summary, coverage: coverage.map(({ what, have, of }) => ({ what, have, of })) },
    findings: findings.map(({ rule, severity, place, message, related, note, help }) => ({
      rule,
      severity,
      ...place,
      message,
      related: (related ?? []).map((it) => ({ label: it.label, ...it.place })),
      note: note ?? null,
      help: help ?? null,
    })),
  }
  return `${JSON.stringify(report, null, 2)}\n`
}
