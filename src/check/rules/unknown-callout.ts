import type { Nodes } from 'mdast'
import { isElement } from '../../model/mdx-elements.ts'
import type { Place } from '../../source/place.ts'
import type { SourceText } from '../../source/source-text.ts'
import { markedPictures } from '../callouts.ts'
import type { Rule } from '../rule.ts'

export const unknownCallout: Rule = {
  id: 'unknown-callout',
  severity: 'warning',
  summary: 'A text names a number that the picture beside it does not have.',
  why: 'The reader looks on the picture for a mark that is not there.',
  source: 'house rule',

  *check(_machine, graph) {
    const pictures = markedPictures(graph)
    for (const { beside, text, callouts } of pictures) {
      const known = new Set(pictures.filter((it) => it.beside[0] === beside[0]).flatMap((it) => it.callouts.map(({ number }) => number)))
      // Of two pictures side by side, each finding is given once.
      if (pictures.find((it) => it.beside[0] === beside[0])?.callouts !== callouts) continue
      for (const { number, place } of beside.flatMap((node) => numbersIn(node, text.source)))
        if (!known.has(number))
          yield {
            message: `the picture has no callout ${number}`,
            place,
            note: `it has ${[...known].join(', ')}`,
            help: 'write the number of the mark, or put one on the picture',
          }
    }
  },
}

/** Numbers in brackets, as a text names marks: `the star knobs (2, 3)`. After a value they are another value. */
function numbersIn(node: Nodes, source: SourceText): { number: number; place: Place }[] {
  if (isElement(node) && node.name === 'Callout') return []
  if ('children' in node) return node.children.flatMap((child) => numbersIn(child, source))
  const { start, end } = node.position ?? {}
  if (node.type !== 'text' || start?.offset === undefined) return []
  const from = start.offset
  return [...source.text.slice(from, end?.offset).matchAll(/(?<=\p{L}\s|^\s)(?<!\d\s?\p{L}{1,4}\s)\((\d{1,2}(?:, \d{1,2})*)\)/gu)].flatMap(
    (bracket) =>
      [...bracket[0].matchAll(/\d+/g)].map(({ index, 0: number }) => {
        const at = from + bracket.index + index
        return { number: Number(number), place: source.place(at, at + number.length) }
      }),
  )
}
