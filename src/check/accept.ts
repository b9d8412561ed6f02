import type { Acceptance } from '../model/acceptance.ts'
import type { Finding } from '../source/finding.ts'
import { type Report, settingRules } from './setting-rules.ts'

export interface AcceptedFinding {
  finding: Finding
  acceptance: Acceptance
}

/** Most findings that are shown beside an entry that matches several. */
const mostShown = 3

/** Parts findings into those that an acceptance covers and those that stay open. */
export function acceptFindings(
  findings: readonly Finding[],
  acceptances: readonly Acceptance[],
  { today, whole, report }: { today: string; whole: boolean; report: Report },
): { open: readonly Finding[]; accepted: readonly AcceptedFinding[] } {
  const byRuleAndFile = Map.groupBy(findings, ({ rule, place }) => key(rule, place.file))
  const covered = new Map<Finding, Acceptance>()
  for (const acceptance of acceptances) {
    const { rule, file, path, message, until } = acceptance
    const near = byRuleAndFile.get(key(rule.value, path)) ?? []
    const matching = near.filter((finding) => finding.message === message.value)
    if (matching.length === 0) matching.push(...near.filter((finding) => finding.message.includes(message.value)))
    const [first] = matching
    const earlier = first && covered.get(first)
    const messages = new Set(matching.map((finding) => finding.message))
    if (!first) {
      if (!whole) continue
      report(settingRules.emptyAcceptance, {
        message: `\`${rule.value}\` finds nothing like this in \`${file.value}\``,
        place: message.place,
        help: near[0] ? `it finds there: ${near[0].message}` : 'take the entry out',
      })
    } else if (messages.size > 1) {
      report(settingRules.uncertainAcceptance, {
        message: `this fits ${messages.size} different messages of \`${rule.value}\``,
        place: message.place,
        related: matching.slice(0, mostShown).map((finding) => ({ label: finding.message, place: finding.place })),
        help: 'write more of the message that is meant, and an entry for each of the others',
      })
    } else if (until.value < today) {
      report(settingRules.expiredAcceptance, {
        message: `this acceptance ended on ${until.value}`,
        place: until.place,
        related: [{ label: first.message, place: first.place }],
        help: 'correct what was accepted and take the entry out, or look at it again and write a later date',
      })
    } else if (earlier) {
      report(settingRules.duplicateAcceptance, {
        message: 'this finding is accepted twice',
        place: message.place,
        related: [{ label: 'the first entry, which holds', place: earlier.message.place }],
        help: 'keep the entry whose reason and date are right, and take the other out',
      })
    } else for (const finding of matching) covered.set(finding, acceptance)
  }
  return {
    open: findings.filter((finding) => !covered.has(finding)),
    accepted: findings.flatMap((finding) => {
      const acceptance = covered.get(finding)
      return acceptance ? [{ finding, acceptance }] : []
    }),
  }
}

const key = (rule: string, file: string) => `${rule}\n${file}`
