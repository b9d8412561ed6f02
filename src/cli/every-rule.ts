import { rules } from '../check/rules.ts'
import { settingRules } from '../check/setting-rules.ts'
import { loadRules } from '../load/load-rules.ts'
import type { RuleTexts } from '../source/finding.ts'

/** The texts of all that a check can find: in the files themselves, between pages and machine, and in the settings of the check. */
export const everyRule: readonly RuleTexts[] = [...Object.values(loadRules), ...rules, ...Object.values(settingRules)]
