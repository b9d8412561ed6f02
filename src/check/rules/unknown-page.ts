import { misnamed, misnamedElsewhere, misnamedProblem, unknownReferences } from '../misnamed.ts'
import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'
import { advice, type Suggestion, suggestFrom } from '../suggest.ts'

export const unknownPage: Rule = {
  id: 'unknown-page',
  severity: 'error',
  summary: 'A page links to a page that does not exist.',
  why: 'The link leads nowhere.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    const known = namesOf(machine, 'page')
    const cautions = namesOf(machine, 'caution')
    const suggest = suggestFrom(known)
    const told = misnamedElsewhere(machine)
    const unknown = unknownReferences(machine, 'page').filter(({ id }) => id !== '' && !told.has(id))
    const slips = misnamed(machine, 'page', unknown)
    for (const slip of slips.values()) yield misnamedProblem(slip, 'page')
    for (const { id, place } of unknown) {
      if (slips.has(id)) continue
      const message = `there is no page \`${id}\``
      const caution = id.replace(/^cautions\//, '')
      if (caution !== id && cautions.has(caution))
        yield { message, place, help: `write \`<Include caution="${caution}" />\` to show the caution here` }
      else yield { message, place, help: helpFor(id, known, suggest(id)) }
    }
  },
}

/** A page is often named as a file, or without its collection. */
function helpFor(id: string, known: ReadonlySet<string>, suggestion: Suggestion): string {
  const name = id.replace(/^(\.{0,2}\/)*(pages\/)?/, '').replace(/(\.[a-z]{2})?\.(mdx?|html?)$/, '')
  if (known.has(name)) return `write \`${name}\``
  const elsewhere = [...known].filter((page) => page.endsWith(`/${name}`))
  if (elsewhere.length > 0)
    return `write ${elsewhere
      .slice(0, 3)
      .map((page) => `\`${page}\``)
      .join(' or ')}`
  return advice(suggestion, 'page', 'write `<collection>/<page>`, or remove the link')
}
