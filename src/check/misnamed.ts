import { normalise } from '../model/designation.ts'
import { editDistance } from '../model/edit-distance.ts'
import type { AnyPage, Machine, NamedThing, Reference } from '../model/machine.ts'
import type { Problem } from '../source/finding.ts'
import type { Located } from '../source/place.ts'
import { namesOf } from './names.ts'

/** A thing that every reference names otherwise: the slip is in its own name. */
export interface Misnamed {
  /** As the references name it. */
  wanted: string
  own: Located<string>
  references: readonly Reference[]
  /** Whether it is named by its file. */
  isFile: boolean
}

const collections = { lockout: 'lockout', lesson: 'lessons', caution: 'cautions' } as const

const rows: Partial<Record<NamedThing, (machine: Machine) => Located<string>[]>> = {
  tag: ({ devices }) => devices.map(({ tag }) => tag),
  part: ({ parts }) => parts.map(({ number }) => number),
  drawing: ({ drawings }) => drawings.map(({ number }) => number),
  alarm: ({ alarms }) => alarms.map(({ number }) => number),
  card: ({ cards }) => cards.map(({ card }) => card),
}

/** So many references at least: one may itself be the slip, and of two in other letters both rarely are. */
const fewest = { spelling: 2, letters: 3 }

/**
 * Names that nothing has and several references give, by that name, where one thing differs from it in spelling or by
 * one letter and no reference names that thing. `unknown`: the references to names that nothing has.
 */
export function misnamed(machine: Machine, kind: NamedThing, unknown: readonly Reference[]): Map<string, Misnamed> {
  const found = new Map<string, Misnamed>()
  const collection = collectionOf(kind)
  const links = collection ? machine.references.filter(({ kind, id }) => kind === 'page' && id.startsWith(`${collection}/`)) : []
  const several = [...Map.groupBy(unknown, ({ id }) => id)]
    .map(([wanted, references]) => [wanted, [...references, ...links.filter(({ id }) => id === `${collection}/${wanted}`)]] as const)
    .filter(([, references]) => references.length >= fewest.spelling)
  if (several.length === 0) return found
  const isFile = rows[kind] === undefined
  const named = new Set([...machine.references.filter((it) => it.kind === kind), ...links].map(({ id }) => id))
  const unnamed = (rows[kind]?.(machine) ?? pagesOf(machine, kind)).filter(({ value }) => !named.has(value) && !named.has(`${collection}/${value}`))
  for (const [wanted, references] of several) {
    const same = unnamed.filter(({ value }) => normalise(value) === normalise(wanted))
    const near = isFile || references.length < fewest.letters ? [] : unnamed.filter(({ value }) => editDistance(value, wanted, 1) === 1)
    const [own, second] = same.length > 0 ? same : near
    if (own && !second) found.set(wanted, { wanted, own, references, isFile })
  }
  return found
}

const collectionOf = (kind: NamedThing) => (kind === 'lockout' || kind === 'lesson' || kind === 'caution' ? collections[kind] : undefined)

/** Ids of pages that links name and that are misnamed for a lockout or a lesson already. */
export function misnamedElsewhere(machine: Machine): Set<string> {
  return new Set(
    (['lockout', 'lesson'] as const).flatMap((kind) =>
      [...misnamed(machine, kind, unknownReferences(machine, kind)).keys()].map((name) => `${collections[kind]}/${name}`),
    ),
  )
}

/** References to names that neither the unit nor the folder has. */
export function unknownReferences(machine: Machine, kind: NamedThing): Reference[] {
  const names = namesOf(machine, kind)
  return machine.references.filter((it) => it.kind === kind && !names.has(it.id) && !machine.absent.has(`${kind}:${it.id}`))
}

function pagesOf({ pages }: Machine, kind: NamedThing): Located<string>[] {
  const nameOf = (page: AnyPage) => ({
    value: kind === 'page' ? page.id : page.name,
    place: { ...page.placeOf([]), line: 1, column: 1, endLine: 1, endColumn: 1 },
  })
  const collection = collectionOf(kind)
  if (kind !== 'page' && !collection) return []
  return pages.filter((page) => (collection ? page.collection === collection : page.collection !== 'cautions')).map(nameOf)
}

/** Most references that are shown beside the name. */
const mostShown = 3

export function misnamedProblem({ wanted, own, references, isFile }: Misnamed, noun: string): Problem {
  const more = references.length - mostShown
  return {
    message: `nothing names ${noun} \`${own.value}\`, and several places name \`${wanted}\``,
    place: own.place,
    related: references.slice(0, mostShown).map(({ place }) => ({ label: `named \`${wanted}\` here`, place })),
    ...(more > 0 ? { note: `${more === 1 ? '1 more place names' : `${more} more places name`} it so` } : {}),
    help: isFile
      ? `rename the file to \`${wanted.replace(/^.*\//, '')}.mdx\`, or correct each place`
      : `write \`${wanted}\` here, or correct each place`,
  }
}
