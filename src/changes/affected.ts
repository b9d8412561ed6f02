import type { Machine, NamedThing } from '../model/machine.ts'
import { comparePlaces, type Place } from '../source/place.ts'
import type { Change, Thing } from './change.ts'

/** A place in a page of the new revision that speaks of a changed thing, by its old or its new name. */
export interface AffectedPlace {
  /** `<collection>/<name>` */
  page: string
  language: string
  place: Place
  /** The name that stands there. */
  name: string
}

const referenceKind: Partial<Record<Thing, NamedThing>> = {
  device: 'tag',
  signal: 'tag',
  card: 'card',
  part: 'part',
  drawing: 'drawing',
  alarm: 'alarm',
  'energy source': 'energy',
}

/** For each change the places in pages, in all languages, that name what it is about: elements, frontmatter and bare tags. In the order of the files. */
export function affectedBy(changes: readonly Change[], machines: readonly Machine[]): Map<Change, AffectedPlace[]> {
  const byName = new Map<string, Map<string, AffectedPlace>>()
  const add = (key: string, it: AffectedPlace) => {
    const places = byName.get(key) ?? new Map<string, AffectedPlace>()
    byName.set(key, places.set(`${it.place.file}:${it.place.line}`, it))
  }
  for (const machine of machines) {
    for (const { kind, id, place, page } of machine.references)
      if (page) add(`${kind}:${id}`, { page: page.page.id, language: page.language, place, name: id })
    for (const { prose, mention } of machine.bareTags()) {
      const name = mention.tag ?? mention.written
      if (prose.page) add(`tag:${name}`, { page: prose.page.id, language: prose.language, place: prose.place(mention.start, mention.end), name })
    }
  }
  return new Map(
    changes.map((change) => {
      const kind = referenceKind[change.thing]
      const names = [...new Set([change.was, change.is])].filter((name) => name !== undefined)
      const places = kind ? names.flatMap((name) => [...(byName.get(`${kind}:${name}`)?.values() ?? [])]) : []
      return [change, places.sort((a, b) => comparePlaces(a.place, b.place))]
    }),
  )
}
