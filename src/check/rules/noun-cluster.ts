import { wordingRule } from '../wording-rule.ts'

export const nounCluster = wordingRule(
  {
    id: 'noun-cluster',
    summary: 'More than three nouns follow each other.',
    why: 'The reader has to guess which noun belongs to which.',
    source: 'ASD-STE100 Issue 9, rule 2.1',
  },
  {
    'noun-cluster': {
      message: ({ words }) => `\`${words}\` is a row of more than three nouns`,
      help: () => 'part it with `of`, `for` or `on`, or put the name in the glossary',
    },
  },
)
