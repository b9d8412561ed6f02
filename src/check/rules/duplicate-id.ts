import type { Problem } from '../../source/finding.ts'
import type { Located } from '../../source/place.ts'
import { duplicates, usedTwice } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicateId: Rule = {
  id: 'duplicate-id',
  severity: 'error',
  summary: 'Two areas, cards, energy sources, hazards, isolation points, lockouts or units have the same name.',
  why: 'A page that names it can mean either, and only one of them is shown.',
  source: 'house rule',
  guards: 'build',

  *check({ areas, cards, energy, hazards = [], file, pages, placeOf, points }) {
    const lockouts = pages.flatMap((page) =>
      page.collection === 'lockout' ? [{ value: page.frontmatter.number, place: page.placeOf(['number']) }] : [],
    )
    const units = file.units.map(({ serial }, index) => ({ value: serial, place: placeOf(['units', index, 'serial']) }))
    yield* twice(
      'area',
      areas.map(({ id }) => id),
    )
    yield* twice(
      'card',
      cards.map(({ card }) => card),
    )
    yield* twice(
      'energy source',
      energy.map(({ id }) => id),
    )
    yield* twice(
      'isolation point',
      points.map(({ point }) => point),
    )
    yield* twice(
      'hazard',
      hazards.map(({ id }) => id),
    )
    yield* twice('serial number', units)
    yield* twice('lockout number', lockouts)
  },
}

function twice(noun: string, ids: readonly Located<string>[]): Iterable<Problem> {
  return duplicates(
    ids,
    (id) => id,
    (id) => id,
    usedTwice(noun),
    'rename one of them',
  )
}
