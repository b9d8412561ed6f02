import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'

const elementOf = { drawing: 'Drawing', part: 'Part', alarm: 'Alarm' } as const

export const bareNumber: Rule = {
  id: 'bare-number',
  severity: 'note',
  summary: 'The text of a page names a drawing, a part or an alarm without an element.',
  why: 'The reader cannot touch the number to open what it names.',
  source: 'house rule',

  *check(machine) {
    const names = { drawing: namesOf(machine, 'drawing'), part: namesOf(machine, 'part'), alarm: namesOf(machine, 'alarm') }
    for (const { mention, prose } of machine.bareNumbers()) {
      const { known, written, start, end } = mention
      const kind = mention.kinds.find((it) => names[it].has(written))
      if (!known || prose.where !== 'body' || kind === undefined) continue
      yield { message: `\`${written}\` is plain text`, place: prose.place(start, end), help: `write \`<${elementOf[kind]} number="${written}" />\`` }
    }
  },
}
