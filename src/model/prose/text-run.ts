import type { Nodes } from 'mdast'
import type { Place } from '../../source/place.ts'
import type { SourceText } from '../../source/source-text.ts'

/** Text as a reader sees it, put together from pieces of a source. */
export interface TextRun {
  text: string
  /** For each character of the text, where what it stands for begins in the source, and where it ends. */
  starts: number[]
  ends: number[]
}

export const emptyRun = (): TextRun => ({ text: '', starts: [], ends: [] })

/** A text node as it is written: the parser drops indents and backslashes, and reads `&lt;` as one character. */
export function appendText(run: TextRun, node: Extract<Nodes, { type: 'text' }>, source: SourceText): void {
  const end = node.position?.end.offset ?? 0
  let at = node.position?.start.offset ?? 0
  for (const character of node.value.split('')) {
    while (at < end - 1 && source.text[at] !== character && /[\s\\>]/.test(source.text[at] ?? '')) at++
    run.starts.push(at)
    at += source.text[at] === '&' ? referenceLength(character, source.text, at) : 1
    run.ends.push(at)
  }
  run.text += node.value
}

/** The length of the character reference at an `&` that was read as a character; 1 where the `&` is meant as it stands. */
function referenceLength(character: string, text: string, at: number): number {
  const [whole = '&'] = /^&#?\w+;/.exec(text.slice(at, at + 40)) ?? []
  return character !== '&' || /^&(?:amp|#38|#x26);$/i.test(whole) ? whole.length : 1
}

/** Words that a node is shown as; each of them stands for the whole node. */
export function appendShown(run: TextRun, words: string, node: Nodes): void {
  run.text += words
  for (let n = 0; n < words.length; n++) {
    run.starts.push(node.position?.start.offset ?? 0)
    run.ends.push(node.position?.end.offset ?? 0)
  }
}

/** The place of the half-open range `[start, end)` of a run. */
export function placeIn({ starts, ends }: TextRun, source: SourceText): (start: number, end: number) => Place {
  return (start, end) => source.place(starts[start] ?? 0, ends[Math.max(start, end - 1)] ?? 0)
}
