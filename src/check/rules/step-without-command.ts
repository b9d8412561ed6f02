import { wordingRule } from '../wording-rule.ts'

export const stepWithoutCommand = wordingRule(
  {
    id: 'step-without-command',
    summary: 'A step tells no one to do anything.',
    why: 'A reader who looks for what to do finds a description.',
    source: 'ASD-STE100 Issue 9, rule 5.3',
  },
  {
    'no-command': {
      message: () => 'the step has no command',
      help: () => 'begin with what to do: open, press, look; or move the text out of the steps',
    },
  },
)
