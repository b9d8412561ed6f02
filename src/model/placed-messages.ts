import type { Place } from '../source/place.ts'
import type { Hazard } from './hazard.ts'
import { type AnyPage, type PageText, textsOf } from './machine.ts'
import type { JsxElement } from './mdx-elements.ts'
import { scanOpeningTag } from './opening-tag.ts'
import { messageOf, type SafetyMessage } from './safety-message.ts'

/** A safety message where a page has it. */
export interface PlacedMessage extends SafetyMessage {
  page: AnyPage
  text: PageText
  element: JsxElement
  /** The name of the element. */
  place: Place
}

/** Every safety message that a page writes out, in the order of pages, languages and text. */
export function placedMessages(pages: readonly AnyPage[], hazardOf: (id: string) => Hazard | undefined): PlacedMessage[] {
  return pages.flatMap((page) =>
    textsOf(page)
      .filter(({ source }) => source.text.includes('<Safety'))
      .flatMap((text) =>
        text.elements('Safety').map((element) => ({ ...messageOf(element, hazardOf), page, text, element, place: namePlace(element, text) })),
      ),
  )
}

/** The place of an element's name. */
export function namePlace(element: JsxElement, { source }: PageText): Place {
  const start = element.position?.start.offset ?? 0
  return source.place(start + 1, start + 1 + (element.name?.length ?? 0))
}

/** The place of the value of an attribute; of the element's name where it is not written. */
export function attributePlace({ element, text }: Pick<PlacedMessage, 'element' | 'text'>, name: string): Place {
  const spot = scanOpeningTag(text.source.text, element.position?.start.offset ?? 0).find((it) => it.name === name)
  return spot ? text.source.place(spot.valueStart, spot.valueEnd) : namePlace(element, text)
}
