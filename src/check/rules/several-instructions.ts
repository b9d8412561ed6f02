import { wordingRule } from '../wording-rule.ts'

export const severalInstructions = wordingRule(
  {
    id: 'several-instructions',
    summary: 'A step orders more than one thing.',
    why: 'The second order is missed, and a tick beside the step says nothing.',
    source: 'ASD-STE100 Issue 9, rule 5.2',
  },
  {
    'several-instructions': {
      message: () => 'the step orders more than one thing',
      help: () => 'make a step of each; keep them together only where they are done at the same time',
    },
  },
)
