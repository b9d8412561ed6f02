import type { AcceptedFinding } from '../check/accept.ts'
import type { Finding } from '../source/finding.ts'
import type { Share, Summary } from './text.ts'

/**
 * Findings for other programs: `{ machine, summary, findings, accepted }`, one object a finding, places from 1,
 * end exclusive, with `cell` in a workbook. `summary.coverage` lists the shares. An accepted finding has `reason`
 * and `until` besides.
 */
export function reportJson(
  findings: readonly Finding[],
  machine: string | undefined,
  summary: Summary,
  coverage: readonly Share[] = [],
  accepted: readonly AcceptedFinding[] = [],
): string {
  const report = {
    machine: machine ?? null,
    summary: { ...summary, coverage: coverage.map(({ what, have, of }) => ({ what, have, of })) },
    findings: findings.map(asRecord),
    accepted: accepted.map(({ finding, acceptance: { reason, until } }) => ({ ...asRecord(finding), reason, until: until.value })),
  }
  return `${JSON.stringify(report, null, 2)}\n`
}

function asRecord({ rule, severity, place, message, related, note, help }: Finding) {
  return {
    rule,
    severity,
    ...place,
    message,
    related: (related ?? []).map((it) => ({ label: it.label, ...it.place })),
    note: note ?? null,
    help: help ?? null,
  }
}
