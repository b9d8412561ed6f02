import { insteadOr, wordingRule } from '../wording-rule.ts'

export const doubledWord = wordingRule(
  {
    id: 'doubled-word',
    summary: 'A word stands twice in a row.',
    why: 'It is a slip of the pen, and a reader stumbles over it.',
    source: 'common practice',
  },
  {
    'doubled-word': {
      message: ({ words }) => `\`${words}\`: a word stands more than once`,
      help: insteadOr('leave one of them out'),
    },
  },
)
