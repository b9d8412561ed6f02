import type { Acceptance, RuleSetting } from '../model/acceptance.ts'
import { compareFindings, type Finding, type RuleTexts, type Severity } from '../source/finding.ts'
import { type AcceptedFinding, acceptFindings } from './accept.ts'
import { type Report, settingRules } from './setting-rules.ts'
import { advice, suggestFrom } from './suggest.ts'

/** What a check comes to. */
export interface Verdict {
  findings: readonly Finding[]
  /** Found, looked at by somebody, and left for a while. */
  accepted: readonly AcceptedFinding[]
}

export interface Judged {
  settings: readonly RuleSetting[]
  acceptances: readonly Acceptance[]
  /** The texts of every rule there is. */
  known: readonly RuleTexts[]
  /** Date on which acceptances are judged, as `2026-09-14`. */
  today: string
  /** Whether all units were checked and every file was read: only then is it certain that an entry matches nothing. */
  whole: boolean
}

/** Findings as the machine folder wants them told: with its severities, and without what it accepts. */
export function judge(found: readonly Finding[], { settings, acceptances, known, today, whole }: Judged): Verdict {
  const own: Finding[] = []
  const report: Report = ({ id, severity }, problem) => own.push({ ...problem, rule: id, severity })
  const byId = new Map(known.map((rule) => [rule.id, rule]))
  const suggest = suggestFrom(byId.keys())
  /** The rule that a setting names. */
  const ruleOf = ({ value, place }: RuleSetting['rule']) => {
    const rule = byId.get(value)
    if (!rule) report(settingRules.unknownRule, { message: `there is no rule \`${value}\``, place, help: advice(suggest(value), 'rule', listed) })
    return rule
  }

  const severities = new Map<string, Severity>()
  for (const { rule: id, severity } of settings) {
    const rule = ruleOf(id)
    if (!rule) continue
    if (rule.guards && rankOf[severity.value] < rankOf[rule.severity]) {
      report(settingRules.silencedGuard, {
        message: `\`${rule.id}\` cannot be lowered to ${severity.value}`,
        place: severity.place,
        note: guardReasons[rule.guards],
        help: 'remove the line, and correct what the rule finds',
      })
    } else severities.set(rule.id, severity.value)
  }
  const told = found.map((finding) => ({ ...finding, severity: severities.get(finding.rule) ?? finding.severity }))

  const usable = acceptances.filter(({ rule: id }) => {
    const rule = ruleOf(id)
    if (!rule?.guards) return rule !== undefined
    report(settingRules.silencedGuard, {
      message: `a finding of \`${rule.id}\` cannot be accepted`,
      place: id.place,
      note: guardReasons[rule.guards],
      help: 'take the entry out, and correct what the rule finds',
    })
    return false
  })
  const { open, accepted } = acceptFindings(told, usable, { today, whole, report })
  return { findings: [...open, ...own].sort(compareFindings), accepted }
}

const rankOf = { note: 0, warning: 1, error: 2 } as const

const listed = '`fettle explain` lists every rule'

/** Why a rule cannot be lowered or accepted. */
export const guardReasons = {
  people: 'the rule guards people',
  build: 'the manual cannot be made whole while this is found',
} as const satisfies Record<NonNullable<RuleTexts['guards']>, string>
