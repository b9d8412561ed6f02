import type { Nodes, Root } from 'mdast'
import { attributeOf, isElement } from '../model/mdx-elements.ts'
import { optionOf } from './body.ts'

/** The body as one unit has it: `<Fitted>` elements are opened where their option is fitted, and gone elsewhere. */
export function fittedBody(body: Root, kept: (option: string) => boolean): Root {
  return holdsFitted(body) ? withChildren(body, kept) : body
}

function holdsFitted(node: Nodes): boolean {
  return optionOf(node) !== undefined || ('children' in node && node.children.some(holdsFitted))
}

function withChildren<N extends Nodes>(node: N, kept: (option: string) => boolean): N {
  if (!('children' in node)) return node
  const children = node.children.flatMap((child: Nodes): Nodes[] => {
    const option = optionOf(child)
    const own = withChildren(child, kept)
    if (option === undefined) return [own]
    return kept(option) && 'children' in own ? own.children : []
  })
  // The children of an element that is opened stand where the element stood, so the kinds fit.
  return { ...node, children } as N
}

/** The anchors that are left in a body: its headings and written anchors. */
export function anchorsOf(node: Nodes): string[] {
  const own: string[] = []
  const id = node.data && 'hProperties' in node.data ? node.data.hProperties?.id : undefined
  if (node.type === 'heading' && typeof id === 'string') own.push(id)
  const written = isElement(node) && node.name === 'Anchor' ? attributeOf(node, 'id') : undefined
  if (written !== undefined) own.push(written)
  return 'children' in node ? [...own, ...node.children.flatMap(anchorsOf)] : own
}
