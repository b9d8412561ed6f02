import type { Nodes } from 'mdast'
import type {} from 'mdast-util-mdx'
import { once } from '../source/once.ts'

export type JsxElement = Extract<Nodes, { type: 'mdxJsxFlowElement' | 'mdxJsxTextElement' }>

export function isElement(node: Nodes): node is JsxElement {
  return node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement'
}

/** Every element of a name below a node, in the order of the text. */
export function elementsOf(node: Nodes, name: string): JsxElement[] {
  const found = 'children' in node ? node.children.flatMap((child) => elementsOf(child, name)) : []
  return isElement(node) && node.name === name ? [node, ...found] : found
}

/** The same as `elementsOf`, for a node that is asked for many names: its elements are looked up once, when they are first asked for. */
export function elementsByName(node: Nodes): (name: string) => readonly JsxElement[] {
  const byName = once(() => {
    const found = new Map<string | null, JsxElement[]>()
    const walk = (it: Nodes): void => {
      if (isElement(it)) {
        const list = found.get(it.name)
        if (list) list.push(it)
        else found.set(it.name, [it])
      }
      if ('children' in it) for (const child of it.children) walk(child)
    }
    walk(node)
    return found
  })
  return (name) => byName().get(name) ?? []
}

/** The text of an attribute; undefined when it is not written, or not as plain text. */
export function attributeOf({ attributes }: JsxElement, name: string): string | undefined {
  const found = attributes.find((it) => it.type === 'mdxJsxAttribute' && it.name === name)
  return typeof found?.value === 'string' ? found.value : undefined
}
