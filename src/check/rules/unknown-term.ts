import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownTerm: Rule = {
  id: 'unknown-term',
  severity: 'error',
  summary: 'A page names a glossary term that no glossary has.',
  why: 'The word would be a link to nowhere.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'term',
      message: 'no glossary has the term',
      noun: 'term',
      otherwise: 'add the term to glossary.yaml, or write the word as plain text',
    })
  },
}
