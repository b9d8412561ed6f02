import type { PlainKind } from '../../reading/plain/finding.ts'
import { sentenceRule } from '../wording-rule.ts'

const asks: Partial<Record<PlainKind, string>> = {
  passive: 'may be passive: does it say a state, or that somebody acts?',
  'no-command': 'may hold no command: is it something to do?',
  'several-instructions': 'may order more than one thing: are they done at the same time?',
  'stacked-negative': 'may deny what is denied: is it meant so?',
  'late-condition': 'may give its condition after the command',
  'unit-not-si': 'is not in a unit of the SI: does the gauge show it so?',
  'replaced-term': 'has more than one term in the glossary: which is meant?',
  'command-in-note': 'may hold a command: does a reader have to do it?',
}

export const unsureWording = sentenceRule(
  {
    id: 'unsure-wording',
    severity: 'note',
    summary: 'A sentence can be read in two ways, one of which is hard to read.',
    why: 'A second look costs a minute; a reader at the machine cannot ask.',
    source: 'ASD-STE100 Issue 9, rules 3.6, 5.2 to 5.5',
  },
  ({ kind, words, sure, place }) => (sure ? undefined : { message: `\`${words}\` ${asks[kind] ?? 'may be hard to read'}`, place }),
)
