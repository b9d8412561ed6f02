import { wordingRule } from '../wording-rule.ts'

export const longSentence = wordingRule(
  {
    id: 'long-sentence',
    summary: 'A sentence has more words than its reader can hold.',
    why: 'In a long sentence the verb and what belongs to it stand far apart. A reader at the machine reads it twice, or skips it.',
    source: 'ASD-STE100 Issue 9, rules 5.1 (20 words in a step or a safety message) and 6.3 (25 words elsewhere)',
  },
  {
    'long-sentence': {
      message: ({ count }) => `the sentence has ${count?.is} words; ${count?.limit} are the most here`,
      help: () => 'make two sentences of it, or a list',
    },
  },
)
