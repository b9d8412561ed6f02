import type { Nodes, Root, RootContent } from 'mdast'
import { isElement } from '../model/mdx-elements.ts'
import type { SourceText } from '../source/source-text.ts'

/** Name of the element that stands for a mark. */
export const markName = 'SourceMark'

/**
 * The body with a mark before each block that says in which line of which file it stands, for the preview.
 * What is inside `<FromSource>` stands in the file of the source language.
 */
export function withSourceMarks(body: Root, own: SourceText, source: SourceText): Root {
  const marked = (nodes: readonly RootContent[], text: SourceText): RootContent[] =>
    nodes.flatMap((node) => {
      const inside = withChildren(node, (children) => marked(children, isElement(node) && node.name === 'FromSource' ? source : text))
      return node.position ? [markAt(text, node), inside] : [inside]
    })
  return { type: 'root', children: marked(body.children, own) }
}

/** Blocks stand in the body and in elements of their own line; what is in a paragraph, list or table is one block. */
function withChildren(node: RootContent, marked: (children: RootContent[]) => RootContent[]): RootContent {
  if (node.type !== 'mdxJsxFlowElement') return node
  return { ...node, children: marked(node.children) as typeof node.children }
}

function markAt({ file, place }: SourceText, node: Nodes): RootContent {
  const { line } = place(node.position?.start.offset ?? 0)
  const attributes = Object.entries({ file, line: String(line) }).map(([name, value]) => ({ type: 'mdxJsxAttribute' as const, name, value }))
  return { type: 'mdxJsxFlowElement', name: markName, attributes, children: [] }
}
