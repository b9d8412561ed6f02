import { type Graph, graphOf } from '../model/graph.ts'
import type { AnyPage, Device, Machine, NamedThing } from '../model/machine.ts'
import { compare, distinctByPlace, type Place } from '../source/place.ts'
import type { Change, Thing } from './change.ts'
import { splitItem } from './checkout-items.ts'
import { namePlacesOf } from './name-places.ts'

/**
 * How a page comes to speak of a thing: it names it; it is a lesson made for the device; a lockout that isolates
 * or verifies by it; a lockout of its area, which need not isolate it; the recovery of an alarm that the device raises.
 */
export type Relation = 'names' | 'lesson' | 'lockout' | 'area-lockout' | 'recovery'

export interface SpeakingPage {
  page: string
  collection: AnyPage['collection']
  title: string
  relation: Relation
  /** Where, by file, line and column; with the language of the text. */
  places: readonly { language: string; place: Place }[]
  /** Every language in which the page is written besides its own. */
  translations: readonly string[]
}

const kindOf: Readonly<Record<Thing, NamedThing | undefined>> = {
  device: 'tag',
  signal: 'tag',
  card: 'card',
  part: 'part',
  drawing: 'drawing',
  alarm: 'alarm',
  setting: undefined,
  'energy source': 'energy',
  hazard: 'hazard',
  'checkout item': undefined,
}

/** The pages that speak of each change, in its order. `pages`: the units whose pages are read; `others`: those of the other revision. */
export function speakingPages(changes: readonly Change[], pages: readonly Machine[], others: readonly Machine[]): SpeakingPage[][] {
  const reused = new Set(changes.filter(({ kind }) => kind === 'means-another').map(({ thing, is }) => `${thing} ${is}`))
  const names = changes.map(namesIn)
  const placesOf = namePlacesOf(pages, new Set(names.flatMap((list) => list.map(({ name }) => name))))
  const [graphs, otherGraphs] = [pages.map(graphOf), others.map(graphOf)]
  const energiesOf = energiesByTag([...pages, ...others])
  return changes.map((change, index) => {
    const found = new Map<string, SpeakingPage>()
    const keep = (page: AnyPage, relation: Relation, places: SpeakingPage['places']) => {
      const known = found.get(page.id)
      if (known && known.relation !== relation) return
      found.set(page.id, {
        page: page.id,
        collection: page.collection,
        title: page.frontmatter.title,
        relation,
        places: distinctByPlace([...(known?.places ?? []), ...places]),
        translations: [...page.translations.keys()].sort(compare),
      })
    }
    if (isToldElsewhere(change, reused)) return []
    for (const { kind, name } of names[index] ?? [])
      for (const { page, language, place } of placesOf(kind, name)) keep(page, 'names', [{ language, place }])
    for (const { page, relation, at } of related(change, graphs, otherGraphs, energiesOf))
      keep(page, relation, [{ language: page.language, place: page.placeOf([at]) }])
    return [...found.values()].sort((a, b) => compare(a.page, b.page))
  })
}

/** The old name of a renamed thing means another now: its pages are named there. */
const isToldElsewhere = ({ thing, kind, was }: Change, reused: ReadonlySet<string>) => kind === 'renamed' && reused.has(`${thing} ${was}`)

/** The names under which pages may still speak of it. */
function namesIn({ thing, kind, was, is, details }: Change): { kind: NamedThing | undefined; name: string }[] {
  if (thing === 'checkout item') return namesOfItem(is ?? was ?? '')
  const named = kindOf[thing]
  const own = kind === 'renamed' || kind === 'removed' ? was : is
  const bare = details
    .filter(({ field, was }) => was !== '' && /(^| )(address|terminal|wire)$/.test(field))
    .map(({ was }) => ({ kind: undefined, name: was }))
  return [...(own === undefined || named === undefined ? [] : [{ kind: named, name: own }]), ...bare]
}

/** Pages write the tag or the number that an item is about. */
function namesOfItem(id: string): { kind: NamedThing; name: string }[] {
  const { kind, name } = splitItem(id)
  if (kind === 'device') return [{ kind: 'tag', name }]
  if (kind === 'card') return [{ kind: 'card', name }]
  return kind === 'part' ? [{ kind: 'part', name }] : []
}

/** Pages that the data bind to a device without its name on them. */
function related(
  change: Change,
  graphs: readonly Graph[],
  others: readonly Graph[],
  energiesOf: ReadonlyMap<string, readonly string[]>,
): { page: AnyPage; relation: Relation; at: string }[] {
  const { thing, kind, was, is, details } = change
  // The meter stands in the lessons of a device with its limits.
  if (thing === 'checkout item') return lessonsFor(change.devices ?? [], graphs)
  if (thing !== 'device') return []
  const all = [...graphs, ...others]
  const names = [...new Set([was, is].filter((name) => name !== undefined))]
  const devices = all.flatMap((graph) => names.flatMap((name): readonly Device[] => [graph.device(name)].filter((device) => device !== undefined)))
  const areas = new Set(kind === 'moved' ? details.filter(({ field }) => field === 'area').flatMap(({ was, is }) => [was, is]) : [])
  const comesOrGoes = kind === 'added' || kind === 'removed' || kind === 'left-out'
  if (comesOrGoes) for (const { area } of devices) if (area) areas.add(area.value)
  const energies = new Set(names.flatMap((name) => energiesOf.get(name) ?? []))
  const alarms = new Set(all.flatMap((graph) => names.flatMap((name) => graph.alarmsOf(name).map(({ number }) => number.value))))
  const teaches = comesOrGoes || kind === 'means-another' || kind === 'part-replaced' || kind === 'changed'
  return graphs.flatMap((graph) => [
    ...(teaches ? devices.flatMap((device) => graph.lessonsOf(device)) : []).map((page) => ({ page, relation: 'lesson' as const, at: 'technology' })),
    ...graph
      .pagesIn('lockout')
      .filter(({ frontmatter }) => frontmatter.energy.some((id) => energies.has(id)))
      .map((page) => ({ page, relation: 'lockout' as const, at: 'energy' })),
    ...[...areas].flatMap((area) => graph.lockoutsCovering(area)).map((page) => ({ page, relation: 'area-lockout' as const, at: 'areas' })),
    ...[...alarms].flatMap((number) => graph.recoveryOf(number) ?? []).map((page) => ({ page, relation: 'recovery' as const, at: 'alarm' })),
  ])
}

const lessonsFor = (tags: readonly string[], graphs: readonly Graph[]) =>
  graphs.flatMap((graph) => {
    const devices = tags.flatMap((tag) => graph.device(tag) ?? [])
    return devices.flatMap((device) => graph.lessonsOf(device)).map((page) => ({ page, relation: 'lesson' as const, at: 'technology' }))
  })

/** Tag -> the energy sources that it isolates or proves to be gone. */
function energiesByTag(machines: readonly Machine[]): Map<string, string[]> {
  const found = new Map<string, string[]>()
  for (const { id, isolation, verify } of machines.flatMap(({ energy }) => energy))
    for (const { value: tag } of [...isolation.map((point) => point.tag), ...verify.tags]) found.set(tag, [...(found.get(tag) ?? []), id.value])
  return found
}
