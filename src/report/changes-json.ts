import type { Place } from '../source/place.ts'
import type { ChangesReport, ToldChange } from './changes-words.ts'

/**
 * Changes for other programs: `{ old, new, remarks, notCompared, pagesOf, changes }`. A change has `kind`, `group`,
 * `thing`, `was` and `is` (its name, null where it is not there), `text`, `details` of `{ field, was, is }`, `notes`,
 * `oldPlace`, `newPlace` and `pages`, each with `relation`, `places` and `translations`. Places count from 1, end
 * exclusive. `notCompared` says what a revision could not give: `extent` is `list`, `no-list`, `column`, `rows` (names not known),
 * `row`, or `unsure`: names of the other revision that it leaves open. What is not there is null, an empty list or an empty text; no field is left out.
 */
export function reportChangesJson({ old, now, remarks, notCompared, pagesOf, changes }: ChangesReport): string {
  const report = {
    format: 'fettle-changes-1',
    old,
    new: now,
    remarks,
    notCompared: notCompared.map(({ side, thing, extent, ids, place }) => ({ side, thing, extent, ids, place: place ?? null })),
    pagesOf: pagesOf ?? null,
    changes: changes.map(asRecord),
  }
  return `${JSON.stringify(report, null, 2)}\n`
}

function asRecord({ kind, group, thing, was, is, text, details, notes, oldPlace, newPlace, pages }: ToldChange) {
  const placeOf = (place: Place | undefined) => place ?? null
  return {
    kind,
    group,
    thing,
    was: was ?? null,
    is: is ?? null,
    text,
    details,
    notes,
    oldPlace: placeOf(oldPlace),
    newPlace: placeOf(newPlace),
    pages: pages.map(({ page, collection, title, relation, places, translations }) => ({
      page,
      collection,
      title,
      relation,
      places: places.map(({ language, place }) => ({ language, ...place })),
      translations,
    })),
  }
}
