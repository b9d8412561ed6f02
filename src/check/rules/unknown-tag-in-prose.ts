import type { BareTag } from '../../model/prose/bare-tags.ts'
import { oddCharacters } from '../../model/prose/look-alikes.ts'
import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'
import { advice, type Suggest, suggestFrom } from '../suggest.ts'

export const unknownTagInProse: Rule = {
  id: 'unknown-tag-in-prose',
  severity: 'warning',
  summary: 'A text has the form of a device tag, and no device has it.',
  why: 'A technician who looks for this tag on the machine will not find it.',
  source: 'house rule',

  *check(machine) {
    const suggest = suggestFrom(namesOf(machine, 'tag'))
    for (const bare of machine.bareTags()) {
      const { is, written, start, end } = bare.mention
      if (is !== 'unknown' && is !== 'respelled') continue
      const odd = /[^\x20-\x7E]/.test(written) ? oddCharacters(written.replace(/[\x20-\x7E]/g, ''), '') : []
      yield {
        message: `no device has the tag \`${written}\``,
        place: bare.prose.place(start, end),
        ...(odd.length > 0 ? { note: `it holds ${odd.join(', ')}` } : {}),
        help: helpFor(bare, suggest),
      }
    }
  },
}

function helpFor({ mention: { meant, written }, prose }: BareTag, suggest: Suggest): string {
  if (meant !== undefined) return `write \`${meant}\`: it differs only in spelling`
  const otherwise = prose.where === 'body' ? 'name a device of the list, or set a word that is no tag as code' : 'name a device of the list'
  return advice(suggest(written), 'tag', otherwise, 'check the drawing before you pick one')
}
