import type { Nodes } from 'mdast'
import { greatestWord, type SignalWord } from '../hazard/signal-word.ts'
import type { Graph } from '../model/graph.ts'
import { statedHarm } from '../model/hazard.ts'
import type { Machine } from '../model/machine.ts'
import { elementsOf } from '../model/mdx-elements.ts'
import { locatedProse, standIn } from '../model/prose/prose.ts'
import type { Place } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'

/** One part of a safety message, on a page or in hazards.yaml. An element in it is a stand-in. */
export interface SafetyText {
  part: 'hazard' | 'consequence' | 'avoid'
  /** The word that the message has; undefined where that is not certain. */
  word: SignalWord | undefined
  language: string
  text: string
  /** The place of the half-open range `[start, end)` of the text. */
  place(start: number, end: number): Place
}

const elementOf = { hazard: 'Hazard', consequence: 'Consequence', avoid: 'Avoid' } as const
const parts = ['hazard', 'consequence', 'avoid'] as const

/** Every part of every safety message that an author wrote, in every language. */
export const safetyTexts = (graph: Graph): readonly SafetyText[] => graph.made(allTexts)

const allTexts = (machine: Machine, graph: Graph) => [...textsIn(machine, graph)]

function* textsIn({ hazards = [] }: Machine, graph: Graph): Iterable<SafetyText> {
  for (const { element, text, harms } of graph.safetyMessages())
    for (const part of parts)
      for (const node of elementsOf(element, elementOf[part]))
        yield { part, word: greatestWord(harms), language: text.language, ...wordsOf(node, text.source) }
  for (const { message, residual } of hazards) {
    if (!message) continue
    const harm = statedHarm(residual)
    for (const part of parts)
      for (const [language, said] of Object.entries(message[part])) {
        const { text, place } = locatedProse(said, language, 'data')
        yield { part, word: harm && greatestWord([harm]), language, text, place }
      }
  }
}

/** The words below a node, as they are read, and where they stand. */
export function wordsOf(node: Nodes, source: SourceText): Pick<SafetyText, 'text' | 'place'> {
  const pieces: { at: number; text: string; start: number; end: number }[] = []
  let text = ''
  const walk = (it: Nodes): void => {
    const [start, end] = [it.position?.start.offset ?? 0, it.position?.end.offset ?? 0]
    const own = it.type === 'text' || it.type === 'inlineCode' ? it.value : 'children' in it && it.children.length > 0 ? undefined : standIn
    if (own !== undefined) {
      pieces.push({ at: text.length, text: own, start, end })
      text += own
    } else if ('children' in it) it.children.forEach(walk)
  }
  walk(node)
  return {
    text,
    place(start, end) {
      const piece = pieces.find(({ at, text }) => start >= at && end <= at + text.length)
      if (!piece) return source.place(pieces[0]?.start ?? 0, pieces.at(-1)?.end ?? 0)
      const exact = source.text.slice(piece.start, piece.end) === piece.text
      return exact ? source.place(piece.start + start - piece.at, piece.start + end - piece.at) : source.place(piece.start, piece.end)
    },
  }
}
