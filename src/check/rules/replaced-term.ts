import { insteadOr, wordingRule } from '../wording-rule.ts'

export const replacedTerm = wordingRule(
  {
    id: 'replaced-term',
    summary: 'A page uses a word that the glossary replaces.',
    why: 'Two names for one thing make a reader look for two things.',
    source: 'house rule: one thing, one name',
  },
  {
    'replaced-term': {
      message: ({ words }) => `the glossary has another term for \`${words}\``,
      help: insteadOr('use the term of the glossary'),
    },
  },
)
