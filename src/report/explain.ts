import type { RuleTexts } from '../source/finding.ts'

/** The texts of a rule, for `fettle explain`. */
export function explainRule({ id, severity, summary, why, source, guards }: RuleTexts): string {
  return `${id} (${severity})\n\n  ${summary}\n\nWhy it matters\n  ${why}\n\nWhere it comes from\n  ${source}\n\nWhat may be set\n  ${guardText(guards)}\n`
}

/** Whether a rule can be lowered and its findings accepted, in a sentence. */
export function guardText(guards: RuleTexts['guards']): string {
  if (guards === 'people') return 'It guards people: it can be raised, and neither lowered nor accepted.'
  if (guards === 'build') return 'The manual cannot be made whole while this is found: it can be raised, and neither lowered nor accepted.'
  return 'machine.yaml can raise or lower it, and accepted.yaml can accept what it finds.'
}
