import { wordingRule } from '../wording-rule.ts'

export const passiveStep = wordingRule(
  {
    id: 'passive-step',
    summary: 'A step is in the passive.',
    why: 'It does not say who acts.',
    source: 'ASD-STE100 Issue 9, rule 3.6',
  },
  {
    passive: {
      message: ({ words }) => `\`${words}\` does not say who acts`,
      help: () => 'write it as a command, or name who or what does it',
    },
  },
)
