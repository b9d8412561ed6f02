import type { Nodes } from 'mdast'
import type { SourceText } from '../../source/source-text.ts'
import type { AnyPage, PageText } from '../machine.ts'
import { attributeOf, isElement, type JsxElement } from '../mdx-elements.ts'
import { scanOpeningTag } from '../opening-tag.ts'
import { locatedProse, type Prose, standIn } from './prose.ts'
import { appendShown, appendText, emptyRun, placeIn, type TextRun } from './text-run.ts'

/** Elements that stand in a sentence; every other one begins and ends a block. */
const inline = new Set(['Tag', 'Part', 'Drawing', 'Alarm', 'Terminal', 'Page', 'Term', 'Fact', 'Anchor'])
const worded = ['state', 'expect', 'basis', 'alt', 'caption'] as const
const flowing = new Set<Nodes['type']>(['emphasis', 'strong', 'delete', 'link', 'linkReference'])

interface Block {
  run: TextRun
  elements: { tag: string; at: number; place: Prose['elements'][number]['place'] }[]
}

/** The text of a page in the blocks that its reader sees, and the words in attributes of its elements. */
export function blocksOf({ body, source, language }: PageText, page: AnyPage): Prose[] {
  const found: Prose[] = []
  let block = emptyBlock()
  const close = (where: Prose['where']) => {
    const { run, elements } = block
    if (/\p{L}/u.test(run.text)) found.push({ text: run.text, elements, place: placeIn(run, source), language, where, page })
    block = emptyBlock()
  }
  const visit = (node: Nodes, where: Prose['where']) => {
    if (node.type === 'text') appendText(block.run, node, source)
    else if (isElement(node) && node.name !== null && inline.has(node.name)) appendElement(block, node, source)
    else if (flowing.has(node.type) && 'children' in node) for (const child of node.children) visit(child, where)
    else if (node.type === 'break') appendShown(block.run, ' ', node)
    else if (node.type === 'inlineCode' || node.type === 'image' || node.type === 'imageReference') appendShown(block.run, standIn, node)
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

const emptyBlock = (): Block => ({ run: emptyRun(), elements: [] })

function appendElement({ run, elements }: Block, node: JsxElement, source: SourceText): void {
  const [start, end] = [node.position?.start.offset ?? 0, node.position?.end.offset ?? 0]
  const tag =
    node.name === 'Tag' ? attributeOf(node, 'id') : node.name === 'Fact' && attributeOf(node, 'of') === 'tag' ? attributeOf(node, 'tag') : undefined
  if (tag !== undefined) elements.push({ tag, at: run.text.length, place: source.place(start, end) })
  appendShown(run, standIn, node)
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
