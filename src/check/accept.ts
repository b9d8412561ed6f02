import type { Acceptance } from '../model/acceptance.ts'
import type { Finding, Problem } from '../source/finding.ts'
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
  const byRule = Map.groupBy(findings, ({ rule }) => rule)
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
      const elsewhere = (byRule.get(rule.value) ?? []).find((finding) => finding.message.includes(message.value))
      report(settingRules.emptyAcceptance, {
        message: `\`${rule.value}\` finds nothing like this in \`${file.value}\``,
        ...wayOutOfEmpty(acceptance, near[0], elsewhere),
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

/**
 * Where an entry that matches nothing goes wrong, and the way out. Another file is named only where the entry names
 * none: otherwise its reason would be taken for a fault that nobody looked at.
 */
function wayOutOfEmpty({ file, isFile, folder, message }: Acceptance, near?: Finding, elsewhere?: Finding): Pick<Problem, 'place' | 'note' | 'help'> {
  if (isFile) return { place: message.place, help: near ? `it finds there: ${near.message}` : 'take the entry out' }
  const wrongPath = { place: file.place, note: 'there is no such file' }
  if (!elsewhere) return { ...wrongPath, help: 'write the path from the machine folder, or take the entry out if the file is gone' }
  const found = elsewhere.place.file
  const path = found.startsWith(folder) ? found.slice(folder.length) : found
  return { ...wrongPath, help: `write \`${path}\` if this is the finding that was looked at` }
}

const key = (rule: string, file: string) => `${rule}\n${file}`
