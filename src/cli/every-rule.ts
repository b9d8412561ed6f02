import { rules } from '../check/rules.ts'
import { loadRules } from '../load/load-rules.ts'
import type { RuleTexts } from '../source/finding.ts'

/** The texts of all that a check can find: in the files themselves, and between pages and machine. */
export const everyRule: readonly RuleTexts[] = [...Object.values(loadRules), ...rules]
