import type { Nodes } from 'mdast'
import { writtenSteps } from '../energy/lockout-of-page.ts'
import { type AnyPage, type EnergySource, type Machine, type PageText, textsOf } from '../model/machine.ts'
import { attributeOf, elementsOf, isElement } from '../model/mdx-elements.ts'
import type { Place } from '../source/place.ts'
import { wordsOf } from './safety-texts.ts'

/** Words about an energy source: a step that stands for it, a step that speaks of what holds its energy, its own words. */
export interface SourceStep {
  source: EnergySource
  language: string
  text: string
  /** It is about nothing else: the text names no other purpose. */
  standsForIt: boolean
  place(start: number, end: number): Place
}

/** Every step and text about the given sources, in every language. A page that names none of them is not walked. */
export function* sourceSteps({ pages }: Machine, sources: readonly EnergySource[]): Iterable<SourceStep> {
  const byId = new Map(sources.map((source) => [source.id.value, source]))
  const byHolder = Map.groupBy(
    sources.flatMap((source) => source.stores.flatMap(({ of }) => (of ? [{ source, tag: of.value }] : []))),
    ({ tag }) => tag,
  )
  for (const source of sources)
    for (const words of [source.dissipate, source.verify.method])
      for (const [language, { value, place }] of Object.entries(words ?? {}))
        yield { source, language, text: value, standsForIt: true, place: () => place }
  for (const page of pages)
    for (const text of textsOf(page)) {
      const claims = claimsIn(page, text)
      if (claims.size === 0 && !text.elements('Tag').some((tag) => byHolder.has(attributeOf(tag, 'id') ?? ''))) continue
      for (const step of stepNodes(text.body)) {
        const claimed = byId.get(claims.get(step) ?? '')
        const tags = elementsOf(step, 'Tag').flatMap((tag) => attributeOf(tag, 'id') ?? [])
        const spoken = tags.flatMap((tag) => byHolder.get(tag)?.map(({ source }) => source) ?? [])
        for (const source of claimed ? [claimed] : new Set(spoken))
          yield { source, language: text.language, standsForIt: claimed !== undefined, ...wordsOf(step, text.source) }
      }
    }
}

/** The source that a step of a lockout stands for. */
function claimsIn({ collection }: AnyPage, { body }: PageText): Map<Nodes, string> {
  if (collection !== 'lockout') return new Map()
  return new Map(writtenSteps(body).flatMap(({ text, source }) => (source === undefined ? [] : [[text, source] as const])))
}

/** Steps, causes, and items of numbered lists. */
function stepNodes(node: Nodes): Nodes[] {
  if (isElement(node) && (node.name === 'Step' || node.name === 'Cause')) return [node]
  if (!('children' in node)) return []
  if (node.type === 'list' && node.ordered) return node.children
  return node.children.flatMap((child) => stepNodes(child))
}
