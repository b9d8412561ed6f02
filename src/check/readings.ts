import type { Graph } from '../model/graph.ts'
import { type Machine, type PageText, textsOf } from '../model/machine.ts'
import { elementsOf, type JsxElement } from '../model/mdx-elements.ts'
import { scanOpeningTag } from '../model/opening-tag.ts'
import type { Located } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'

/** The attributes of a `<Reading … />` on a page, each at its place. */
export type Reading = ReadonlyMap<string, Located<string>>

/** Every reading on the pages of the unit, in every language. */
export const readingsOf = (graph: Graph): readonly Reading[] => graph.made(allReadings)

function allReadings({ pages }: Machine): Reading[] {
  return pages.flatMap(textsOf).flatMap(({ elements, source }) => readingsFrom(elements('Reading'), source))
}

/** Every `<Step>` with readings, and what it holds. */
export function stepsWithReadings(text: PageText): { step: JsxElement; readings: Reading[] }[] {
  if (text.elements('Reading').length === 0) return []
  return text.elements('Step').flatMap((step) => {
    const readings = readingsFrom(elementsOf(step, 'Reading'), text.source)
    return readings.length > 0 ? [{ step, readings }] : []
  })
}

function readingsFrom(elements: readonly JsxElement[], source: SourceText): Reading[] {
  return elements.map(
    (element) =>
      new Map(
        scanOpeningTag(source.text, element.position?.start.offset ?? 0).map(({ name, valueStart, valueEnd }) => [
          name,
          { value: source.text.slice(valueStart, valueEnd), place: source.place(valueStart, valueEnd) },
        ]),
      ),
  )
}
