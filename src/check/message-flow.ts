import type { Nodes } from 'mdast'
import { compareWords, greatestWord, type SignalWord } from '../hazard/signal-word.ts'
import type { Graph } from '../model/graph.ts'
import { type AnyPage, type Machine, type PageText, textsOf } from '../model/machine.ts'
import { attributeOf, isElement, type JsxElement } from '../model/mdx-elements.ts'
import { namePlace, type PlacedMessage } from '../model/placed-messages.ts'
import { once } from '../source/once.ts'
import type { Place } from '../source/place.ts'

/** A safety message as it stands between other things: written out, or included as a caution. */
export interface FlowMessage {
  element: JsxElement
  kind: string | undefined
  word: SignalWord | undefined
  place(): Place
  /** Equal for messages of the same words. */
  key(): string
}

/** A text, and the messages in it. */
export interface Flow {
  page: AnyPage
  text: PageText
  /** Every step of it, in the order of the text. */
  steps(): readonly StepBelow[]
  messageAt(node: Nodes): FlowMessage | undefined
}

/** Every text of the pages that shows a safety message. */
export const messageFlows = (graph: Graph): readonly Flow[] => graph.made(allFlows)

function allFlows({ pages }: Machine, graph: Graph): Flow[] {
  const written = new Map(graph.safetyMessages().map((it) => [it.element, it]))
  const ofCaution = Map.groupBy(graph.safetyMessages(), ({ page }) => page)
  const messageAt = (node: Nodes, text: PageText): FlowMessage | undefined => {
    if (!isElement(node)) return undefined
    const message = written.get(node)
    if (message) return message.kind === 'directive' ? undefined : writtenOut(message)
    const caution = node.name === 'Include' ? graph.page(`cautions/${attributeOf(node, 'caution') ?? ''}`) : undefined
    const words = (caution ? (ofCaution.get(caution) ?? []) : []).flatMap(({ harms }) => greatestWord(harms) ?? [])
    return (
      caution && { element: node, place: () => namePlace(node, text), kind: undefined, word: words.toSorted(compareWords)[0], key: () => caution.id }
    )
  }
  return pages.flatMap((page) =>
    textsOf(page).flatMap((text): Flow[] => {
      if (text.elements('Safety').length === 0 && text.elements('Include').length === 0) return []
      return [{ page, text, steps: once(() => stepsBelow(text.body)), messageAt: (node) => messageAt(node, text) }]
    }),
  )
}

function writtenOut({ element, place, kind, harms, names, text: { source } }: PlacedMessage): FlowMessage {
  const key = () => {
    const from = element.children[0]?.position?.start.offset
    const own = from === undefined ? '' : source.text.slice(from, element.children.at(-1)?.position?.end.offset)
    return [...names, own.replace(/\s+/g, ' ')].join(' ')
  }
  return { element, place: () => place, kind, word: greatestWord(harms), key }
}

/** Whether a node says something to do: not empty, no message, and no more than what is seen or measured after a step. */
export function instructs(node: Nodes): boolean {
  if (node.type === 'text') return node.value.trim() !== ''
  if (!isElement(node)) return 'children' in node ? node.children.some(instructs) : node.type === 'inlineCode'
  if (['Safety', 'Include', 'Anchor', 'Result', 'Reading', 'Figure'].includes(node.name ?? '')) return false
  return true
}

export const isSteps = (node: Nodes) => isElement(node) && node.name === 'Steps'

/** A step, or an item of a numbered list, with what stands directly in it. */
export interface StepBelow {
  /** The list that it stands in. */
  list: Nodes
  children: readonly Nodes[]
}

/** Every step below a node, in the order of the text. A cause says what to do, as a step does. */
function stepsBelow(node: Nodes, found: StepBelow[] = []): StepBelow[] {
  if (!mayHoldBlocks(node)) return found
  const isNumbered = node.type === 'list' && node.ordered === true
  for (const child of node.children) {
    if ((isNumbered || (isElement(child) && (child.name === 'Step' || child.name === 'Cause'))) && 'children' in child)
      found.push({ list: node, children: child.children })
    stepsBelow(child, found)
  }
  return found
}

/** Whether steps or messages can stand in a node: not in words alone. */
export function mayHoldBlocks(node: Nodes): node is Extract<Nodes, { children: Nodes[] }> {
  if (!('children' in node) || node.type === 'heading' || node.type === 'table') return false
  return node.type !== 'paragraph' || node.children.some(isElement)
}
