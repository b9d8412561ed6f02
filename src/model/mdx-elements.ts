import type { Nodes } from 'mdast'
import type {} from 'mdast-util-mdx'

export type JsxElement = Extract<Nodes, { type: 'mdxJsxFlowElement' | 'mdxJsxTextElement' }>

export function isElement(node: Nodes): node is JsxElement {
  return node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement'
}

/** Every element of a name below a node, in the order of the text. */
export function elementsOf(node: Nodes, name: string): JsxElement[] {
  const found = 'children' in node ? node.children.flatMap((child) => elementsOf(child, name)) : []
  return isElement(node) && node.name === name ? [node, ...found] : found
}

/** The text of an attribute; undefined when it is not written, or not as plain text. */
export function attributeOf({ attributes }: JsxElement, name: string): string | undefined {
  const found = attributes.find((it) => it.type === 'mdxJsxAttribute' && it.name === name)
  return typeof found?.value === 'string' ? found.value : undefined
}
