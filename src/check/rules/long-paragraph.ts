import { wordingRule } from '../wording-rule.ts'

export const longParagraph = wordingRule(
  {
    id: 'long-paragraph',
    summary: 'A paragraph has more than six sentences.',
    why: 'Nobody finds the one fact in a block of text.',
    source: 'ASD-STE100 Issue 9, rule 6.6',
  },
  {
    'long-paragraph': {
      message: ({ count }) => `the paragraph has ${count?.is} sentences; ${count?.limit} are the most`,
      help: () => 'part it by topic, or make a list of it',
    },
  },
)
