import type { RuleTexts } from '../source/finding.ts'

/** The texts of a rule, for `fettle explain`. */
export function explainRule({ id, severity, summary, why, source }: RuleTexts): string {
  return `${id} (${severity})\n\n  ${summary}\n\nWhy it matters\n  ${why}\n\nWhere it comes from\n  ${source}\n`
}
