import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownCard: Rule = {
  id: 'unknown-card',
  severity: 'error',
  summary: 'The I/O list names a card that is not in the list of cards.',
  why: 'The reader cannot find the card in the cabinet.',
  source: 'house rule',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'card',
      message: 'the list of cards has no card',
      noun: 'card',
      otherwise: 'add the card to the list of cards, or correct the name',
    })
  },
}
