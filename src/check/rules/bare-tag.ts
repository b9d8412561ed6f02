import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'

export const bareTag: Rule = {
  id: 'bare-tag',
  severity: 'note',
  summary: 'The text of a page names a device without an element.',
  why: 'The reader cannot touch the tag to see where the device is.',
  source: 'house rule',

  *check(machine) {
    const names = namesOf(machine, 'tag')
    for (const { mention, prose } of machine.bareTags()) {
      const { is, tag, written, start, end } = mention
      if (is !== 'known' || prose.where !== 'body' || tag === undefined || !names.has(tag)) continue
      yield { message: `\`${written}\` is plain text`, place: prose.place(start, end), help: `write \`<Tag id="${tag}" />\`` }
    }
  },
}
