import type { PlainFinding } from './finding.ts'
import { findingAt } from './sentence-view.ts'

/** A term, and the words that writers use instead of it. */
export interface PreferredTerm {
  term: string
  instead: readonly string[]
}

/** Words of a text that the glossary replaces by a term. For many texts make one `termReader`. */
export const replacedTerms = (text: string, glossary: readonly PreferredTerm[]): PlainFinding[] => termReader(glossary)(text)

/**
 * Finds the words that a glossary replaces, singular or plural. A word inside a longer one of the glossary, a term included, is not that word:
 * "light barrier pair" is no "light barrier". A word that is a term in its own right is never replaced.
 */
export function termReader(glossary: readonly PreferredTerm[]): (text: string) => PlainFinding[] {
  const terms = termsByWord(glossary)
  if (terms.size === 0) return () => []
  const longestFirst = [...terms.keys()].sort((a, b) => b.length - a.length)
  const pattern = new RegExp(String.raw`(?<![\p{L}\p{N}-])(${longestFirst.map(asPattern).join('|')})((?:e?s)?)(?![\p{L}\p{N}]|-\p{L})`, 'giu')
  const replaced = [...terms].filter(([, preferred]) => preferred.size > 0).map(([key]) => key.split(' ')[0] ?? key)
  return (text) => {
    const lower = text.toLowerCase()
    // The pattern of a whole glossary is slow, and few texts hold a word that is replaced.
    if (!replaced.some((word) => lower.includes(word))) return []
    return [...text.matchAll(pattern)].flatMap(({ index, 0: words, 1: word = '', 2: plural }) => {
      const preferred = [...(terms.get(keyOf(word)) ?? [])]
      const [only] = preferred
      if (only === undefined) return []
      const certain = preferred.length === 1
      const span = { start: index, end: index + words.length }
      const suggestion = certain && plural === '' ? { suggestion: only } : {}
      return [{ ...findingAt({ block: { kind: 'paragraph', text } }, 'replaced-term', span, { sure: certain, ...suggestion }), terms: preferred }]
    })
  }
}

/** What replaces each word of the glossary; nothing for a term itself. */
function termsByWord(glossary: readonly PreferredTerm[]): Map<string, ReadonlySet<string>> {
  const own = new Set(glossary.map(({ term }) => keyOf(term)))
  const terms = new Map<string, Set<string>>()
  for (const key of own) terms.set(key, new Set())
  for (const { term, instead } of glossary)
    for (const key of instead.map(keyOf)) if (key !== '' && !own.has(key)) terms.set(key, (terms.get(key) ?? new Set()).add(term))
  terms.delete('')
  return terms
}

const keyOf = (words: string) => words.toLowerCase().replace(/\s+/g, ' ').trim()
const asPattern = (key: string) => key.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`).replaceAll(' ', String.raw`\s+`)
