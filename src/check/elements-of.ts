import type { Nodes } from 'mdast'
import type {} from 'mdast-util-mdx'

type JsxElement = Extract<Nodes, { type: 'mdxJsxFlowElement' | 'mdxJsxTextElement' }>

/** Every element of a name below a node, in the order of the text. */
export function elementsOf(node: Nodes, name: string): JsxElement[] {
  const found = 'children' in node ? node.children.flatMap((child) => elementsOf(child, name)) : []
  return (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') && node.name === name ? [node, ...found] : found
}
