import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'
import { advice } from '../suggest.ts'

export const unknownImage: Rule = {
  id: 'unknown-image',
  severity: 'error',
  summary: 'A page shows a picture that is not there.',
  why: 'The reader sees an empty frame.',
  source: 'house rule',

  *check({ references, images }) {
    for (const { id, place } of referencesTo(references, 'image')) {
      if (images.has(id)) continue
      const path = id.replace(/^\.?\//, '')
      const [cased] = [...images.keys()].filter((it) => it.toLowerCase() === path.toLowerCase())
      const help = cased ? `write \`${cased}\`` : advice(path, images.keys(), 'picture', 'the path counts from the machine folder, or from content/')
      yield { message: `there is no picture \`${id}\``, place, ...(cased ? { note: 'a panel tells upper case from lower case' } : {}), help }
    }
  },
}
