import { type AnyPage, type Machine, type NamedThing, type PageText, textsOf } from '../model/machine.ts'
import { distinctByPlace, type Place } from '../source/place.ts'

/** Where a page, in one of its languages, writes a name. */
export interface NamePlace {
  page: AnyPage
  language: string
  place: Place
}

/** Finds where pages write a name: as a reference of a kind, or bare in their text. Each place once, in order. */
export type NamePlaces = (kind: NamedThing | undefined, name: string) => readonly NamePlace[]

/** What may stand around a name in a text: brackets, quotes, commas, what ends a sentence. */
const around = /[\s"'`“”‘’«»()[\]{}<>,;!?|*]+/

/** Reads the pages of the units once. `wanted`: the names that anyone will ask for. */
export function namePlacesOf(machines: readonly Machine[], wanted: ReadonlySet<string>): NamePlaces {
  const written = new Map<string, NamePlace[]>()
  const keep = (key: string, place: NamePlace) => {
    const list = written.get(key)
    if (list) list.push(place)
    else written.set(key, [place])
  }
  const seen = new Set<PageText>()
  for (const machine of machines) {
    const pages = new Map(machine.pages.map((page) => [page.id, page]))
    for (const { kind, id, place, page } of machine.references) {
      const own = page && pages.get(page.page.id)
      if (own && page && wanted.has(id)) keep(`${kind}:${id}`, { page: own, language: page.language, place })
    }
    // A tag in words may be spelt in another way than in the list.
    for (const { prose, mention } of machine.bareTags()) {
      const own = prose.page && pages.get(prose.page.id)
      if (own && mention.tag !== undefined && wanted.has(mention.tag))
        keep(`tag:${mention.tag}`, { page: own, language: prose.language, place: prose.place(mention.start, mention.end) })
    }
    for (const page of machine.pages) {
      for (const text of textsOf(page)) {
        if (seen.has(text)) continue
        seen.add(text)
        for (const { name, place } of bareNames(text, wanted)) keep(`bare:${name}`, { page, language: text.language, place })
      }
    }
  }
  return (kind, name) => {
    const all = [...(kind ? (written.get(`${kind}:${name}`) ?? []) : []), ...(isDistinct(name) ? (written.get(`bare:${name}`) ?? []) : [])]
    return distinctByPlace(all)
  }
}

/** Whether a text that equals the name is likely to mean it: `7` and `OIL` are words of their own. */
const isDistinct = (name: string) => name.length >= 3 && /\d/.test(name)

function* bareNames({ source }: PageText, wanted: ReadonlySet<string>): Iterable<{ name: string; place: Place }> {
  let offset = 0
  for (const piece of source.text.split(new RegExp(`(${around.source})`))) {
    // A full stop or a colon at the end is of the sentence.
    const name = piece.replace(/[.:]+$/, '')
    const found = wanted.has(name) ? [{ name, at: 0 }] : partsOf(name).filter((part) => wanted.has(part.name))
    for (const part of found) {
      if (!isDistinct(part.name)) continue
      const start = offset + part.at
      yield { name: part.name, place: source.place(start, start + part.name.length) }
    }
    offset += piece.length
  }
}

/** The names in `PRS204/PRS205` and `id=PRS204`. */
function partsOf(text: string): { name: string; at: number }[] {
  return [...text.matchAll(/[^/=]+/g)].map(({ 0: name, index: at }) => ({ name, at }))
}
