import { wordingRule } from '../wording-rule.ts'

export const lateCondition = wordingRule(
  {
    id: 'late-condition',
    summary: 'A step gives its condition after the command, or no comma after it.',
    why: 'The reader has acted before the condition is read.',
    source: 'ASD-STE100 Issue 9, rule 5.4',
  },
  {
    'late-condition': {
      message: () => 'the condition stands after the command',
      help: () => 'put the condition first, then a comma, then the command',
    },
    'missing-comma': {
      message: () => 'no comma stands between the condition and the command',
      help: () => 'put a comma where the command begins',
    },
  },
)
