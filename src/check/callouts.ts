import type { Nodes, Parents } from 'mdast'
import type { Graph } from '../model/graph.ts'
import { type Machine, type PageText, textsOf } from '../model/machine.ts'
import { attributeOf, elementsOf, isElement, type JsxElement } from '../model/mdx-elements.ts'
import { scanOpeningTag } from '../model/opening-tag.ts'
import { namePlace } from '../model/placed-messages.ts'
import type { Place } from '../source/place.ts'

export interface Callout {
  element: JsxElement
  /** As it is written. A value that is no number is NaN and reported by the reader. */
  number: number
  xPercent: number
  yPercent: number
  /** The place of the value of an attribute. */
  place(name: string): Place
}

/** A picture with the marks on it. */
export interface MarkedPicture {
  text: PageText
  figure: JsxElement
  callouts: readonly Callout[]
  /** What a reader has in view beside the picture: its step, or the text under the same heading. */
  beside: readonly Nodes[]
}

/** Every picture with callouts, in the order of pages, languages and text. */
export const markedPictures = (graph: Graph): readonly MarkedPicture[] => graph.made(allPictures)

function allPictures({ pages }: Machine): MarkedPicture[] {
  return pages.flatMap(textsOf).flatMap((text) =>
    text.elements('Callout').length === 0
      ? []
      : text.elements('Figure').flatMap((figure) => {
          const callouts = elementsOf(figure, 'Callout').map((element) => calloutOf(element, text))
          return callouts.length > 0 ? [{ text, figure, callouts, beside: besideOf(figure, text) }] : []
        }),
  )
}

function calloutOf(element: JsxElement, text: PageText): Callout {
  const number = (name: string) => Number(attributeOf(element, name) ?? Number.NaN)
  return {
    element,
    number: number('n'),
    xPercent: number('x'),
    yPercent: number('y'),
    place(name) {
      const spot = scanOpeningTag(text.source.text, element.position?.start.offset ?? 0).find((it) => it.name === name)
      return spot ? text.source.place(spot.valueStart, spot.valueEnd) : namePlace(element, text)
    },
  }
}

function besideOf(figure: JsxElement, { body }: PageText): readonly Nodes[] {
  const step = stepAround(figure, body)
  if (step) return step.children
  const at = body.children.findIndex((child) => child === figure || holds(child, figure))
  const from = body.children.findLastIndex((child, index) => index <= at && child.type === 'heading')
  const to = body.children.findIndex((child, index) => index > at && child.type === 'heading')
  return body.children.slice(Math.max(0, from), to < 0 ? undefined : to)
}

const holds = (node: Nodes, wanted: Nodes): boolean => 'children' in node && node.children.some((child) => child === wanted || holds(child, wanted))

function stepAround(figure: Nodes, node: Nodes): Parents | undefined {
  if (!('children' in node) || !holds(node, figure)) return undefined
  const inner = node.children.map((child) => stepAround(figure, child)).find(Boolean)
  return inner ?? (isElement(node) && node.name === 'Step' ? node : undefined)
}
