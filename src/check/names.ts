import type { AnyPage, Machine, NamedThing } from '../model/machine.ts'

const pagesIn = ({ pages }: Machine, collection: AnyPage['collection']) =>
  pages.flatMap((page) => (page.collection === collection ? [page.name] : []))

const byKind: Record<NamedThing, (machine: Machine) => Iterable<string>> = {
  tag: ({ devices }) => devices.map(({ tag }) => tag.value),
  part: ({ parts }) => parts.map(({ number }) => number.value),
  drawing: ({ drawings }) => drawings.map(({ number }) => number.value),
  alarm: ({ alarms }) => alarms.map(({ number }) => number.value),
  card: ({ cards }) => cards.map(({ card }) => card.value),
  // A standard caution is included by pages; it is no page to go to.
  page: ({ pages }) => pages.flatMap(({ id, collection }) => (collection === 'cautions' ? [] : [id])),
  lesson: (machine) => pagesIn(machine, 'lessons'),
  lockout: (machine) => pagesIn(machine, 'lockout'),
  caution: (machine) => pagesIn(machine, 'cautions'),
  image: ({ images }) => images.keys(),
  term: ({ terms }) => terms.map(({ id }) => id),
  area: ({ areas }) => areas.map(({ id }) => id.value),
  energy: ({ energy }) => energy.map(({ id }) => id.value),
  point: ({ points }) => points.map(({ point }) => point.value),
  hazard: ({ hazards = [] }) => hazards.map(({ id }) => id.value),
  option: ({ options }) => options.keys(),
  terminal: ({ signals, spares }) => [...signals, ...spares].flatMap(({ terminal }) => terminal?.value ?? []),
  role: ({ training }) => training.roles.map(({ id }) => id),
  skill: ({ training }) => training.skills.map(({ id }) => id),
}

/** Every name of a kind that this unit has. */
export function namesOf(machine: Machine, kind: NamedThing): Set<string> {
  return new Set(byKind[kind](machine))
}
