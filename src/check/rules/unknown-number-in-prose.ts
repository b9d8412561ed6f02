import type { BareNumber } from '../../model/prose/bare-numbers.ts'
import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownNumberInProse: Rule = {
  id: 'unknown-number-in-prose',
  severity: 'warning',
  summary: 'A text has the form of a drawing, part or alarm number, and no list has it.',
  why: 'The reader looks for a drawing, a part or an alarm that is not there.',
  source: 'house rule',

  *check(machine) {
    const suggest = {
      drawing: suggestFrom(namesOf(machine, 'drawing')),
      part: suggestFrom(namesOf(machine, 'part')),
      alarm: suggestFrom(namesOf(machine, 'alarm')),
    }
    for (const { mention, prose } of machine.bareNumbers()) {
      const { kinds, known, written, start, end } = mention
      const [kind, ...others] = kinds
      if (known || kind === undefined) continue
      yield {
        message: `no ${[kind, ...others].join(' and no ')} has the number \`${written}\``,
        place: prose.place(start, end),
        help: helpFor(mention.meant, () =>
          advice(suggest[kind](written), `${kind} number`, otherwise(prose), `check the ${lists[kind]} before you choose one`),
        ),
      }
    }
  },
}

const lists = { drawing: 'drawing register', part: 'bill of materials', alarm: 'alarm list' } as const

const helpFor = (meant: string | undefined, other: () => string) =>
  meant === undefined ? other() : `write \`${meant}\`: it differs only in spelling`

const otherwise = ({ where }: BareNumber['prose']) =>
  where === 'body' ? 'name one of the list, or set a word that is no such number as code' : 'name one of the list'
