import type { Problem, RuleTexts } from '../source/finding.ts'

/** Takes a finding about a setting. */
export type Report = (rule: RuleTexts, problem: Problem) => void

const rule = (id: string, summary: string, why: string): RuleTexts => ({
  id,
  severity: 'error',
  summary,
  why,
  source: 'house rule',
  guards: 'people',
})

/** What can be wrong with the settings of the check itself: `rules` in machine.yaml, and accepted.yaml. */
export const settingRules = {
  unknownRule: rule(
    'unknown-rule',
    'A setting or an acceptance names a rule that does not exist.',
    'Whoever wrote it believes that something is switched, and nothing is.',
  ),
  silencedGuard: rule(
    'silenced-guard',
    'A rule that guards people, or without which the manual is not whole, is lowered or accepted.',
    'A gap in a safety message or a lockout would reach the machine without anyone being stopped by it.',
  ),
  emptyAcceptance: rule(
    'acceptance-without-finding',
    'An entry of accepted.yaml matches no finding.',
    'The fault was put right, or the entry never fitted. If it stays, it will hide a new fault one day.',
  ),
  duplicateAcceptance: rule(
    'duplicate-acceptance',
    'Two entries of accepted.yaml accept the same finding.',
    'They give two reasons or two dates, and only one of them would be told.',
  ),
  uncertainAcceptance: rule(
    'uncertain-acceptance',
    'An entry of accepted.yaml matches findings that say different things.',
    'A reason was written for one of them. The others were never looked at.',
  ),
  expiredAcceptance: rule(
    'expired-acceptance',
    'The date of an entry of accepted.yaml is past.',
    'The finding was to stay for a while only. Somebody has to look at it again.',
  ),
} as const satisfies Record<string, RuleTexts>
