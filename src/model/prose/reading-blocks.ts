import type { Nodes } from 'mdast'
import type { Block, BlockKind } from '../../reading/block.ts'
import type { Place } from '../../source/place.ts'
import type { PageText } from '../machine.ts'
import { attributeOf, isElement, type JsxElement } from '../mdx-elements.ts'
import { standIn } from './prose.ts'
import { appendShown, appendText, emptyRun, placeIn } from './text-run.ts'

/** What a reader takes in at once, with its place on the page. */
export interface ReadingBlock extends Block {
  /** The place of the half-open range `[start, end)` of the text. */
  place(start: number, end: number): Place
}

/** Elements that stand in a sentence, with the attribute that is read as their word; without one, the word is made by the site. */
const inline: Readonly<Record<string, string | undefined>> = {
  Tag: 'id',
  Part: 'number',
  Drawing: 'number',
  Alarm: 'number',
  Terminal: 'id',
  Page: undefined,
  Fact: undefined,
}
const flowing = new Set<Nodes['type']>(['emphasis', 'strong', 'delete', 'link', 'linkReference'])
/** What is no running text: headings, code, and elements that show data. */
const apart = new Set<string | null>(['heading', 'code', 'html', 'Reading', 'Figure', 'Table', 'Include', 'SafetySummary', 'Anchor'])
const noteWord = /^\s*(?:note|nota|hinweis|remarque)\s*:\s*/i

/**
 * The running text of a page in blocks: paragraphs, items, steps, parts of safety messages, and cells that hold a whole
 * sentence. Headings, captions, code and values of tables are left out. `termOf` gives the words of a glossary term.
 */
export function readingBlocks({ body, source }: Pick<PageText, 'body' | 'source'>, termOf: (id: string) => string | undefined): ReadingBlock[] {
  const found: ReadingBlock[] = []
  let run = emptyRun()
  const close = (kind: BlockKind) => {
    const { text } = run
    const note = kind === 'paragraph' ? noteWord.exec(text)?.[0].length : undefined
    const place = placeIn(run, source)
    run = emptyRun()
    if (!/\p{L}/u.test(text) || (kind === 'cell' && !/[.!?]\s*$/.test(text))) return
    if (note === undefined) found.push({ kind, text, place })
    else found.push({ kind: 'note', text: text.slice(note), place: (start, end) => place(start + note, end + note) })
  }
  const flow = (node: Nodes): boolean => {
    if (node.type === 'text') appendText(run, node, source)
    else if (node.type === 'break') appendShown(run, ' ', node)
    else if (isElement(node) && node.name !== null && (node.name in inline || node.name === 'Term')) appendElement(node)
    else if (flowing.has(node.type) && 'children' in node) node.children.forEach(flow)
    else return ['inlineCode', 'image', 'imageReference', 'footnoteReference'].includes(node.type)
    return true
  }
  const appendElement = (node: JsxElement): void => {
    const term = node.name === 'Term' ? termOf(attributeOf(node, 'id') ?? '') : undefined
    if (node.children.length > 0) node.children.forEach(flow)
    else appendShown(run, term ?? shownName(node), node)
  }
  const visitAll = (nodes: readonly Nodes[], kind: BlockKind) => {
    for (const [index, node] of nodes.entries()) {
      if (flow(node)) continue
      close(kind)
      visit(node, kindOf(node, kind, nodes[index + 1]))
    }
    close(kind)
  }
  const visit = (node: Nodes, kind: BlockKind): void => {
    if (apart.has(isElement(node) ? node.name : node.type) || !('children' in node)) return
    const from = found.length
    visitAll(node.type === 'table' ? node.children.slice(1) : node.children, kind)
    if (!isElement(node) || node.name !== 'Step') return
    for (const block of found
      .slice(from)
      .filter((it) => it.kind === 'step')
      .slice(1))
      block.continues = true
  }
  visitAll(body.children, 'paragraph')
  return found
}

/** A name with a digit is read as one. A terminal such as `PE` would be taken for an abbreviation of the writer. */
function shownName(node: JsxElement): string {
  const name = attributeOf(node, inline[node.name ?? ''] ?? '')
  return name !== undefined && /\d/.test(name) ? name : standIn
}

function kindOf(node: Nodes, around: BlockKind, next: Nodes | undefined): BlockKind {
  if (isElement(node))
    return node.name === 'Safety'
      ? 'message'
      : node.name === 'Step'
        ? 'step'
        : node.name === 'Cause'
          ? 'item'
          : node.name === 'Result'
            ? 'paragraph'
            : around
  if (node.type === 'listItem') return around === 'message' ? around : 'item'
  if (node.type === 'tableCell') return 'cell'
  if (node.type !== 'paragraph' || !isListed(next)) return around
  return around === 'paragraph' && endsInColon(node) ? 'lead-in' : around
}

const isListed = (node: Nodes | undefined) =>
  node?.type === 'list' || (node !== undefined && isElement(node) && (node.name === 'Steps' || node.name === 'Causes'))

function endsInColon(node: Nodes): boolean {
  const last = 'children' in node ? node.children.at(-1) : undefined
  return last?.type === 'text' && last.value.trimEnd().endsWith(':')
}
