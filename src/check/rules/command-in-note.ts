import { wordingRule } from '../wording-rule.ts'

export const commandInNote = wordingRule(
  {
    id: 'command-in-note',
    summary: 'A note holds a command.',
    why: 'Readers skip notes. What they have to do must stand in a step.',
    source: 'ASD-STE100 Issue 9, rule 5.5',
  },
  {
    'command-in-note': {
      message: () => 'the note holds a command',
      help: () => 'make a step of it',
    },
  },
)
