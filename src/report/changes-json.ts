import type { Place } from '../source/place.ts'
import type { ChangesReport, ToldChange } from './changes-words.ts'
import type { ToldRetraining } from './retraining.ts'

/**
 * Changes for other programs: `{ old, new, remarks, notCompared, pagesOf, changes }`. A change has `kind`, `group`,
 * `thing`, `was` and `is` (its name, null where it is not there), `text`, `details` of `{ field, was, is }`, `notes`,
 * `oldPlace`, `newPlace` and `pages`, each with `relation`, `places` and `translations`. Places count from 1, end
 * exclusive. `notCompared` says what a revision could not give: `extent` is `list`, `no-list`, `column`, `rows` (names not known),
 * `row`, or `unsure`: names of the other revision that it leaves open. `retraining` is null without `--records`: `{ file, entries, hash, day, people,
 * unknownLessons }`, a person with `person`, `name` and `lessons`, each with `lesson`, `title`, `revision` and `reasons` of `{ change, revision, date, what }`. What is not there is null, an empty list or an empty text; no field is left out.
 */
export function reportChangesJson({ old, now, remarks, notCompared, pagesOf, changes, retraining }: ChangesReport): string {
  const report = {
    format: 'fettle-changes-1',
    old,
    new: now,
    remarks,
    notCompared: notCompared.map(({ side, thing, extent, ids, place }) => ({ side, thing, extent, ids, place: place ?? null })),
    pagesOf: pagesOf ?? null,
    changes: changes.map(asRecord),
    retraining: retraining ? retrainingRecord(retraining) : null,
  }
  return `${JSON.stringify(report, null, 2)}\n`
}

function retrainingRecord({ file, entries, hash, day, people, unknownLessons }: ToldRetraining) {
  return {
    file,
    entries,
    hash: hash ?? null,
    day,
    people: people.map(({ person, name, lessons }) => ({
      person,
      name: name ?? null,
      lessons: lessons.map(({ lesson, title, revision, reasons }) => ({
        lesson,
        title,
        revision,
        reasons: reasons.map((it) => ({ change: it.change, revision: it.revision ?? null, date: it.date, what: it.what ?? null })),
      })),
    })),
    unknownLessons,
  }
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
