import { wordingRule } from '../wording-rule.ts'

export const stackedNegative = wordingRule(
  {
    id: 'stacked-negative',
    summary: 'A sentence denies what is denied.',
    why: 'Under stress the reader loses count of the negatives, and does the opposite.',
    source: 'common practice in plain language',
  },
  {
    'stacked-negative': {
      message: ({ words }) => `\`${words}\` holds a negative on a negative`,
      help: () => 'say what to do, or what is so',
    },
  },
)
