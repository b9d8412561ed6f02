import { type Machine, textsOf } from '../model/machine.ts'
import { elementsOf } from '../model/mdx-elements.ts'
import { scanOpeningTag } from '../model/opening-tag.ts'
import type { Located } from '../source/place.ts'

/** The attributes of a `<Reading … />` on a page, each at its place. */
export type Reading = ReadonlyMap<string, Located<string>>

/** Every reading on the pages of the unit, in every language. */
export function readingsOf({ pages }: Pick<Machine, 'pages'>): Reading[] {
  return pages.flatMap(textsOf).flatMap(({ body, source }) =>
    elementsOf(body, 'Reading').map((element): Reading => {
      const attributes = scanOpeningTag(source.text, element.position?.start.offset ?? 0)
      return new Map(
        attributes.map(({ name, valueStart, valueEnd }) => [
          name,
          { value: source.text.slice(valueStart, valueEnd), place: source.place(valueStart, valueEnd) },
        ]),
      )
    }),
  )
}
