import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'
import { advice } from '../suggest.ts'

export const unknownPage: Rule = {
  id: 'unknown-page',
  severity: 'error',
  summary: 'A page links to a page that does not exist.',
  why: 'The link leads nowhere.',
  source: 'house rule',

  *check(machine) {
    const known = new Set(machine.pages.filter(({ collection }) => collection !== 'cautions').map(({ id }) => id))
    for (const { id, place } of referencesTo(machine.references, 'page')) {
      if (id === '' || known.has(id) || machine.absent.has(`page:${id}`)) continue
      // A page is often named without its collection.
      const [elsewhere] = [...known].filter((page) => page.endsWith(`/${id}`))
      const help = elsewhere ? `write \`${elsewhere}\`` : advice(id, known, 'page', 'write `<collection>/<page>`, or remove the link')
      yield { message: `there is no page \`${id}\``, place, help }
    }
  },
}
