import type { Nodes } from 'mdast'
import type { SourceText } from '../../source/source-text.ts'
import type { AnyPage, PageText } from '../machine.ts'
import { attributeOf, isElement, type JsxElement } from '../mdx-elements.ts'
import { scanOpeningTag } from '../opening-tag.ts'
import { locatedProse, type Prose, standIn } from './prose.ts'

/** Elements that stand in a sentence; every other one begins and ends a block. */
const inline = new Set(['Tag', 'Part', 'Drawing', 'Alarm', 'Terminal', 'Page', 'Term', 'Fact', 'Anchor'])
const worded = ['state', 'expect', 'basis', 'alt', 'caption'] as const
const flowing = new Set<Nodes['type']>(['emphasis', 'strong', 'delete', 'link', 'linkReference'])

interface Block {
  text: string
  /** Offset in the source of each character of the text. */
  offsets: number[]
  elements: { tag: string; at: number; place: Prose['elements'][number]['place'] }[]
}

/** The text of a page in the blocks that its reader sees, and the words in attributes of its elements. */
export function blocksOf({ body, source, language }: PageText, page: AnyPage): Prose[] {
  const found: Prose[] = []
  let block = emptyBlock()
  const close = (where: Prose['where']) => {
    if (/\p{L}/u.test(block.text)) found.push({ ...asProse(block, source), language, where, page })
    block = emptyBlock()
  }
  const visit = (node: Nodes, where: Prose['where']) => {
    if (node.type === 'text') append(block, node.value, sourceOffsets(node.value, node, source))
    else if (isElement(node) && node.name !== null && inline.has(node.name)) appendElement(block, node, source)
    else if (flowing.has(node.type) && 'children' in node) for (const child of node.children) visit(child, where)
    else if (node.type === 'break') append(block, ' ', [node.position?.start.offset ?? 0])
    else if (node.type === 'inlineCode' || node.type === 'image' || node.type === 'imageReference')
      append(block, standIn, [node.position?.start.offset ?? 0])
    else if ('children' in node) {
      close(where)
      if (isElement(node)) for (const prose of attributeProse(node, source, language)) found.push({ ...prose, page })
      const inside = node.type === 'heading' ? 'heading' : where
      for (const child of node.children) visit(child, inside)
      close(inside)
    }
  }
  visit(body, 'body')
  return found
}

const emptyBlock = (): Block => ({ text: '', offsets: [], elements: [] })

function append(block: Block, text: string, offsets: readonly number[]): void {
  block.text += text
  for (const offset of offsets) block.offsets.push(offset)
}

function appendElement(block: Block, node: JsxElement, source: SourceText): void {
  const start = node.position?.start.offset ?? 0
  const tag =
    node.name === 'Tag' ? attributeOf(node, 'id') : node.name === 'Fact' && attributeOf(node, 'of') === 'tag' ? attributeOf(node, 'tag') : undefined
  if (tag !== undefined) block.elements.push({ tag, at: block.text.length, place: source.place(start, node.position?.end.offset ?? start) })
  append(block, standIn, [start])
}

function asProse({ text, offsets, elements }: Block, source: SourceText): Omit<Prose, 'language' | 'where'> {
  return { text, elements, place: (start, end) => source.place(offsets[start] ?? 0, (offsets[end - 1] ?? 0) + 1) }
}

/** Where each character of a text node stands: the parser drops indents and backslashes, and reads `&lt;` as one character. */
function sourceOffsets(value: string, node: Nodes, source: SourceText): number[] {
  const end = node.position?.end.offset ?? 0
  let at = node.position?.start.offset ?? 0
  const offsets: number[] = []
  for (const character of value.split('')) {
    while (at < end - 1 && source.text[at] !== character && /[\s\\>]/.test(source.text[at] ?? '')) at++
    offsets.push(at)
    const entity = source.text[at] === '&' && character !== '&' ? source.text.indexOf(';', at) : -1
    at = entity === -1 ? at + 1 : entity + 1
  }
  return offsets
}

function attributeProse(node: JsxElement, source: SourceText, language: string): Prose[] {
  const spots = scanOpeningTag(source.text, node.position?.start.offset ?? 0)
  return worded.flatMap((name) => {
    const value = attributeOf(node, name)
    const spot = spots.find((it) => it.name === name)
    if (value === undefined || !spot) return []
    return [locatedProse({ value, place: source.place(spot.valueStart, spot.valueEnd) }, language, 'attribute')]
  })
}
