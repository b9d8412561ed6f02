import type { Graph } from '../model/graph.ts'
import { type Machine, type Reference, type Sheet, textsOf } from '../model/machine.ts'
import { attributeOf, type JsxElement } from '../model/mdx-elements.ts'
import { readSheetReference } from '../model/sheet-reference.ts'
import { comparePlaces, type Place } from '../source/place.ts'

/** A place where an author says that a drawing shows a device. */
export interface SheetClaim {
  tag: string
  drawing: string
  /** Undefined when only the drawing is named. */
  sheet: number | undefined
  place: Place
}

/** The sheet that is meant; undefined where only a drawing of several sheets is named. */
export function claimedSheet({ drawing, sheet }: SheetClaim, graph: Graph): Sheet | undefined {
  const sheets = graph.drawing(drawing)?.sheetList ?? []
  return sheets.length === 1 && sheet === undefined ? sheets[0] : sheets.find(({ number }) => number === sheet)
}

/** What the device list says, and `<Drawing number="…" sheet="…" tag="…" />` on pages. */
export function sheetClaims(machine: Machine): SheetClaim[] {
  return [...inDeviceList(machine), ...onPages(machine)]
}

function inDeviceList({ devices }: Machine): SheetClaim[] {
  return devices.flatMap(({ tag, drawing, sheet }) =>
    drawing ? [{ tag: tag.value, drawing: drawing.value, sheet: sheet?.value, place: (sheet ?? drawing).place }] : [],
  )
}

function onPages({ pages, references }: Machine): SheetClaim[] {
  const tagsIn = Map.groupBy(
    references.filter(({ kind }) => kind === 'tag'),
    ({ place }) => place.file,
  )
  return pages
    .flatMap(textsOf)
    .flatMap(({ elements, source }) =>
      elements('Drawing').flatMap((element) => claimOf(element, source.place(element.position?.start.offset ?? 0), tagsIn.get(source.file) ?? [])),
    )
}

/** None when it names no device. References stand in the order of the text: the first after its start is its own. */
function claimOf(element: JsxElement, start: Place, tags: readonly Reference[]): SheetClaim[] {
  const [tag, drawing, sheet] = [attributeOf(element, 'tag'), attributeOf(element, 'number'), attributeOf(element, 'sheet')]
  const reference = tags.find(({ id, place }) => id === tag && comparePlaces(start, place) <= 0)
  if (!reference || drawing === undefined) return []
  return [
    {
      tag: reference.id,
      drawing,
      sheet: sheet === undefined ? undefined : (readSheetReference(sheet)?.sheet ?? Number(sheet)),
      place: reference.place,
    },
  ]
}
