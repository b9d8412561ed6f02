import type { Nodes } from 'mdast'
import type { Lockout } from '../energy/lockout-of-page.ts'
import type { LockoutStep } from '../energy/lockout-sequence.ts'
import type { Graph } from '../model/graph.ts'
import { attributeOf, isElement, type JsxElement } from '../model/mdx-elements.ts'
import { composedText, type Piece, type Speaker } from './lockout-text.ts'
import { fill } from './words/fill.ts'

/** A step of a lockout as one line of plain text, with what must be seen behind an arrow. */
export function stepText(step: LockoutStep<JsxElement>, lockout: Lockout, graph: Graph, speaker: Speaker): string {
  if (step.text) return tidy(written(step.text, graph, speaker))
  const { pieces, result } = composedText(step, lockout, speaker)
  return tidy(`${pieces.map(plain).join('')}${result ? ` → ${result.text}` : ''}`)
}

const plain = (piece: Piece): string => (typeof piece === 'string' ? piece : 'tag' in piece ? piece.tag : piece.said.text)

const tidy = (text: string) => text.replace(/\s+/g, ' ').trim()

function written(node: Nodes, graph: Graph, speaker: Speaker): string {
  if (node.type === 'text' || node.type === 'inlineCode') return node.value
  const inner = 'children' in node ? node.children.map((child: Nodes) => written(child, graph, speaker)).join('') : ''
  if (!isElement(node)) return node.type === 'paragraph' ? ` ${inner} ` : inner
  if (inner.trim() !== '' && node.name !== 'Result') return inner
  switch (node.name) {
    case 'Result':
      return ` → ${inner.trim()}`
    case 'Reading':
      return ` → ${reading(node, speaker)}`
    case 'Page': {
      const page = graph.page(attributeOf(node, 'id')?.split('#')[0] ?? '')
      return page?.translations.get(speaker.language)?.frontmatter.title ?? page?.frontmatter.title ?? ''
    }
    default:
      return attributeOf(node, 'id') ?? attributeOf(node, 'number') ?? attributeOf(node, 'tag') ?? inner
  }
}

function reading(node: JsxElement, { labels }: Speaker): string {
  const [low, high, unit = '', expect = '', state] = ['low', 'high', 'unit', 'expect', 'state'].map((name) => attributeOf(node, name))
  const exact = high !== undefined && (high === low || (low === undefined && Number(high) === 0))
  const range = exact
    ? `${high} ${unit}`
    : fill(low && high ? labels.from : low ? labels.atLeast : high ? labels.atMost : '', { low: low ?? '', high: high ?? '', unit })
  return [range.replace('\u00a0', ' '), expect, state && `(${state})`].filter(Boolean).join(' ')
}
