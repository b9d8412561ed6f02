import { namesOf } from '../names.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownImage: Rule = {
  id: 'unknown-image',
  severity: 'error',
  summary: 'A page shows a picture that is not there.',
  why: 'The reader sees an empty frame.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    const names = namesOf(machine, 'image')
    const suggest = suggestFrom(names)
    const lower = new Map([...names].map((name) => [name.toLowerCase(), name]))
    for (const { id, place } of referencesTo(machine.references, 'image')) {
      if (names.has(id)) continue
      const path = id.replace(/^(\.{0,2}\/)*/, '')
      const message = `there is no picture \`${id}\``
      const cased = lower.get(path.toLowerCase())
      if (cased === undefined)
        yield { message, place, help: advice(suggest(path), 'picture', 'the path counts from the machine folder, or from content/') }
      else if (cased === path) yield { message, place, help: `write \`${cased}\`: the path counts from the machine folder, or from content/` }
      else yield { message, place, note: 'a panel tells upper case from lower case', help: `write \`${cased}\`` }
    }
  },
}
