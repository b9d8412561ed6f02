import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownTerminal: Rule = {
  id: 'unknown-terminal',
  severity: 'error',
  summary: 'A page names a terminal that is not in the I/O list.',
  why: 'The technician measures at a terminal that is not there, or at another one.',
  source: 'house rule',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'terminal',
      message: 'the I/O list has no terminal',
      noun: 'terminal',
      otherwise: 'add the terminal to the I/O list, or write one that carries no signal as plain text',
      beforeChoosing: 'check the drawing before you choose one',
    })
  },
}
