import { insteadOr, wordingRule } from '../wording-rule.ts'

export const contractedWord = wordingRule(
  {
    id: 'contracted-word',
    summary: 'A word is contracted.',
    why: 'Contractions are hard for those who learned the language at school, and `not` gets lost in them.',
    source: 'ASD-STE100 Issue 9, rule 4.2',
  },
  {
    contraction: {
      message: ({ words }) => `\`${words}\` is a contraction`,
      help: insteadOr('write it in full'),
    },
  },
)
