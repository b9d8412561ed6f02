import { oddCharacters } from '../../model/prose/look-alikes.ts'
import type { Rule } from '../rule.ts'

export const lookAlikeTag: Rule = {
  id: 'look-alike-tag',
  severity: 'error',
  summary: 'A text looks like a device tag and is written with other characters.',
  why: 'The reader sees the tag; search and links do not find it.',
  source: 'house rule',

  *check(machine) {
    for (const { mention, prose } of machine.bareTags()) {
      const { is, written, meant, start, end } = mention
      if (is !== 'look-alike' || meant === undefined) continue
      const odd = oddCharacters(written, meant)
      yield {
        message: `\`${written}\` looks like \`${meant}\` and is not`,
        place: prose.place(start, end),
        ...(odd.length > 0 ? { note: `it holds ${odd.join(', ')}` } : {}),
        help: `write \`${meant}\``,
      }
    }
  },
}
