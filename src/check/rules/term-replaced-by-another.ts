import type { Rule } from '../rule.ts'

export const termReplacedByAnother: Rule = {
  id: 'term-replaced-by-another',
  severity: 'warning',
  summary: 'A term of the glossary is a word that another term replaces.',
  why: 'The check asks a writer to write neither of them.',
  source: 'house rule: one thing, one name',

  *check({ terms }) {
    const named = new Map(
      terms.flatMap((term) => Object.entries(term.byLanguage).map(([language, it]) => [`${language} ${it.term.toLowerCase()}`, term] as const)),
    )
    for (const { id, byLanguage, place } of terms)
      for (const [language, { term, instead }] of Object.entries(byLanguage))
        for (const word of instead) {
          const other = named.get(`${language} ${word.toLowerCase()}`)
          if (!other) continue
          yield {
            message: `\`${term}\` replaces \`${word}\`, which is ${other.id === id ? 'itself' : 'a term of its own'}`,
            place,
            ...(other.id === id ? {} : { related: [{ label: 'the other term', place: other.place }] }),
            help: other.id === id ? 'take it out of `instead`' : 'take it out of `instead`, or give the other term up and name its word as a synonym',
          }
        }
  },
}
