import { wordingRule } from '../wording-rule.ts'

export const unexpandedAbbreviation = wordingRule(
  {
    id: 'unexpanded-abbreviation',
    summary: 'A page never gives an abbreviation in words.',
    why: 'The reader does not know what it is, and cannot look it up at the machine.',
    source: 'common practice',
  },
  {
    'unexpanded-abbreviation': {
      message: ({ words }) => `the page never says what \`${words}\` is`,
      help: () => 'give it in words at its first use, or put it in the glossary',
    },
  },
)
