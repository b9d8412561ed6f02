import { insteadOr, wordingRule } from '../wording-rule.ts'

export const plainWord = wordingRule(
  {
    id: 'plain-word',
    summary: 'A word has a plain one that says the same.',
    why: 'The plain word is known to more readers.',
    source: 'common practice in plain language',
  },
  {
    'plain-word': {
      message: ({ words }) => `\`${words}\` has a plainer word`,
      help: insteadOr('use the plainer word'),
    },
  },
)
