import type { Nodes, Root, RootContent } from 'mdast'
import type { AnyPage } from './machine.ts'
import { isElement } from './mdx-elements.ts'
import type { Block, SyncedBlock } from './sync.ts'

/** Nodes that are shown as they are, marked as older than the source, or taken from the source. */
interface Part {
  wrapper: 'Older' | 'FromSource' | undefined
  nodes: readonly RootContent[]
}

/**
 * The body of a page in a language. A block that is older than its source is put inside `<Older>`. One that
 * holds a safety message and is older, or is missing, is shown as the source has it, inside `<FromSource>`.
 */
export function shownBody(page: AnyPage, language: string): Root {
  const translation = page.translations.get(language)
  if (!translation) return page.body
  const { sync, body } = translation
  if (sync.state === 'unstamped') return body
  const inSource = nodesByBlock(page.body)
  if (sync.state === 'shifted') {
    const messages = sync.changed.map((block) => inSource(block)).filter((nodes) => nodes.some(holdsSafety))
    return joined([...messages.map(fromSource), { wrapper: undefined, nodes: body.children }], page.language)
  }
  const inOwn = nodesByBlock(body)
  const parts = sync.blocks.flatMap((block) => partsOf(block, block.own ? inOwn(block.own) : [], block.source ? inSource(block.source) : []))
  return joined([...parts, { wrapper: undefined, nodes: inOwn(undefined) }], page.language)
}

function partsOf({ state }: SyncedBlock, own: readonly RootContent[], source: readonly RootContent[]): Part[] {
  if (state === 'same') return [{ wrapper: undefined, nodes: own }]
  if (state === 'added') return [fromSource(source)]
  if (state === 'removed' || ![...own, ...source].some(holdsSafety)) return [{ wrapper: 'Older', nodes: own }]
  // Anchors were put in front of a block when the page was read: links from elsewhere lead to them.
  return [{ wrapper: undefined, nodes: own.filter(({ position }) => !position) }, fromSource(source)]
}

/** Nodes of the source in a translation, which has the anchors of the source already. */
function fromSource(nodes: readonly RootContent[]): Part {
  return { wrapper: 'FromSource', nodes: nodes.flatMap(withoutAnchor) }
}

function withoutAnchor(node: RootContent): RootContent[] {
  if (isElement(node) && node.name === 'Anchor') return []
  if (node.type !== 'heading') return [node]
  const { data: _, ...heading } = node
  return [heading]
}

function holdsSafety(node: Nodes): boolean {
  if (isElement(node) && (node.name === 'Safety' || node.name === 'Include')) return true
  return 'children' in node && node.children.some(holdsSafety)
}

/** Gives the nodes of a body that stand in a block, each with the nodes without a place before it; what is left at the end for no block. */
function nodesByBlock({ children }: Root): (block: Block | undefined) => RootContent[] {
  const groups: { offset: number | undefined; nodes: RootContent[] }[] = []
  let waiting: RootContent[] = []
  for (const node of children) {
    waiting.push(node)
    if (!node.position) continue
    groups.push({ offset: node.position.start.offset, nodes: waiting })
    waiting = []
  }
  const rest = waiting
  return (block) => (block ? groups.flatMap(({ offset = -1, nodes }) => (offset >= block.start && offset < block.end ? nodes : [])) : rest)
}

/** Parts of one kind that follow each other become one: its note is said once, with the language of the source. */
function joined(parts: readonly Part[], language: string): Root {
  const kept: Part[] = []
  for (const part of parts) {
    if (part.nodes.length === 0) continue
    const last = kept.at(-1)
    if (last && last.wrapper === part.wrapper) kept[kept.length - 1] = { ...last, nodes: [...last.nodes, ...part.nodes] }
    else kept.push(part)
  }
  return { type: 'root', children: kept.flatMap(({ wrapper, nodes }) => (wrapper ? [element(wrapper, language, nodes)] : nodes)) }
}

function element(name: string, language: string, nodes: readonly RootContent[]): RootContent {
  // What stands at the top of a body can stand in an element of its own line.
  const children = [...nodes] as Extract<RootContent, { type: 'mdxJsxFlowElement' }>['children']
  return { type: 'mdxJsxFlowElement', name, attributes: [{ type: 'mdxJsxAttribute', name: 'language', value: language }], children }
}
