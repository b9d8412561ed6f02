import type { Located, Place } from '../../source/place.ts'
import type { AnyPage } from '../machine.ts'

/** Stands in the text of a block for an element, a picture or code: something that is no bare word. */
export const standIn = '\uFFFC'

/** Words that belong together: a paragraph, a cell, a heading, a value of frontmatter or of a data file. */
export interface Prose {
  text: string
  language: string
  /** `body` is running text, where an element could stand. */
  where: 'body' | 'heading' | 'attribute' | 'frontmatter' | 'data'
  /** Devices that `<Tag>` and `<Fact of="tag">` name, each at its stand-in. */
  elements: readonly { tag: string; at: number; place: Place }[]
  page?: AnyPage
  /** The place of the half-open range `[start, end)` of the text; of all of it where the two are written differently. */
  place(start: number, end: number): Place
}

export function locatedProse(located: Located<string>, language: string, where: Prose['where']): Prose {
  return { text: located.value, language, where, elements: [], place: (start, end) => placeInside(located, start, end) }
}

/** Exact where the value stands as it is written, alone or in one pair of quotes. */
function placeInside({ value, place }: Located<string>, start: number, end: number): Place {
  const width = place.line === place.endLine ? place.endColumn - place.column : -1
  if (width !== value.length && width !== value.length + 2) return place
  const column = place.column + (width - value.length) / 2
  return { ...place, column: column + start, endColumn: column + end }
}
