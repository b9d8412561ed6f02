import type { Nodes } from 'hast'
import type {} from 'mdast-util-mdx'

/** A mark on a picture: its number, and its place in percent from the left and from the top. */
export interface CalloutMark {
  n: string
  x: string
  y: string
}

/** Gives each picture the numbers and places of its callouts, which it draws over itself; their texts stand below it. */
export function giveMarks(node: Nodes): void {
  if (!('children' in node)) return
  for (const child of node.children) giveMarks(child)
  if (!isJsx(node) || node.name !== 'Figure') return
  const marks = marksIn(node)
  if (marks.length > 0) node.attributes.push({ type: 'mdxJsxAttribute', name: 'marks', value: JSON.stringify(marks) })
}

type Jsx = Extract<Nodes, { type: 'mdxJsxFlowElement' | 'mdxJsxTextElement' }>

const isJsx = (node: Nodes): node is Jsx => node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement'

function marksIn(node: Nodes): CalloutMark[] {
  const below = 'children' in node ? node.children.flatMap(marksIn) : []
  if (!isJsx(node) || node.name !== 'Callout') return below
  const said = (name: string) => {
    const value = node.attributes.find((it) => it.type === 'mdxJsxAttribute' && it.name === name)?.value
    return typeof value === 'string' ? value : ''
  }
  return [{ n: said('n'), x: said('x'), y: said('y') }, ...below]
}
