import type { RootContent } from 'mdast'
import type {} from 'mdast-util-mdx'
import type { PageText, TranslatedText } from '../model/machine.ts'
import { elementsByName } from '../model/mdx-elements.ts'

/**
 * Gives a translation the anchors of its source as well, so that a link from a page that is not translated leads
 * to the same place. With as many headings as the source has, each anchor stands at its own heading; otherwise
 * at the head of the page.
 */
export function alignAnchors<T extends PageText>(translation: T, source: PageText): T & Pick<TranslatedText, 'anchorsAtHead'> {
  const missing = [...source.anchors].filter((anchor) => !translation.anchors.has(anchor))
  if (missing.length === 0) return { ...translation, anchorsAtHead: new Set() }
  const paired = translation.headings.length === source.headings.length
  const at = new Map<number, string[]>()
  for (const anchor of missing) {
    const index = paired ? source.headings.findIndex((heading) => heading.anchor === anchor) : -1
    at.set(index, [...(at.get(index) ?? []), anchor])
  }
  let heading = 0
  const children: RootContent[] = (at.get(-1) ?? []).map(anchorElement)
  for (const node of translation.body.children) {
    if (node.type === 'heading') children.push(...(at.get(heading++) ?? []).map(anchorElement))
    children.push(node)
  }
  const anchors = new Set([...translation.anchors, ...source.anchors])
  const body = { ...translation.body, children }
  return { ...translation, body, elements: elementsByName(body), anchors, anchorsAtHead: new Set(at.get(-1)) }
}

function anchorElement(id: string): RootContent {
  return { type: 'mdxJsxFlowElement', name: 'Anchor', attributes: [{ type: 'mdxJsxAttribute', name: 'id', value: id }], children: [] }
}
