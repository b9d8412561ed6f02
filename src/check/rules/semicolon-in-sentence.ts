import { wordingRule } from '../wording-rule.ts'

export const semicolonInSentence = wordingRule(
  {
    id: 'semicolon-in-sentence',
    summary: 'A sentence has a semicolon.',
    why: 'It joins what could stand as two short sentences.',
    source: 'ASD-STE100 Issue 9, rule 8.1',
  },
  {
    semicolon: {
      message: () => 'a semicolon joins two sentences',
      help: () => 'make two sentences of it',
    },
  },
)
