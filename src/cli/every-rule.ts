import { rules } from '../check/rules.ts'
import { settingRules } from '../check/setting-rules.ts'
import { loadRules } from '../load/load-rules.ts'
import type { RuleTexts } from '../source/finding.ts'

/** All that a check can find, by where it looks. */
export const ruleGroups: readonly { title: string; rules: readonly RuleTexts[] }[] = [
  { title: 'In the files themselves', rules: Object.values(loadRules) },
  { title: 'Between the pages, the data and the drawings', rules },
  { title: 'In the settings of the check', rules: Object.values(settingRules) },
]

export const everyRule: readonly RuleTexts[] = ruleGroups.flatMap((group) => group.rules)
