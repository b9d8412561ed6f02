import { insteadOr, wordingRule } from '../wording-rule.ts'

export const unitStyle = wordingRule(
  {
    id: 'unit-style',
    summary: 'A quantity is not written as the SI or the language has it.',
    why: 'A reader who reads `Mw` for `mW`, or 1,500 for 1.5, sets the machine wrong.',
    source: 'SI brochure, 9th edition, chapter 5; ISO 80000-1',
  },
  {
    'unit-not-si': {
      message: ({ words }) => `\`${words}\` is not in a unit of the SI`,
      help: insteadOr('give the SI value, and the other in brackets where a gauge shows it'),
    },
    'unit-form': {
      message: ({ words }) => `\`${words}\` is not written as the SI has it`,
      help: insteadOr('write the symbol of the unit, after a space'),
    },
    'decimal-sign': {
      message: ({ words }) => `\`${words}\` has the decimal sign of another language`,
      help: insteadOr('write the decimal sign of the language'),
    },
  },
)
