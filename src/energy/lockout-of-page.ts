import type { Nodes, Root, RootContent } from 'mdast'
import type { NotComputed } from '../law/law.ts'
import type { Graph } from '../model/graph.ts'
import { type WrittenPhase, writtenPhases } from '../model/lockout-phases.ts'
import type { EnergySource, IsolationPoint, Page } from '../model/machine.ts'
import { attributeOf, isElement, type JsxElement } from '../model/mdx-elements.ts'
import { composeSequence, type LockoutStep, type WrittenStep } from './lockout-sequence.ts'
import { type Wait, waitOfSource } from './wait-of-source.ts'

/** A lockout as one unit has it. */
export interface Lockout {
  page: Page<'lockout'>
  /** In the order in which they are isolated. */
  sources: readonly EnergySource[]
  /** Each once, in that order. */
  points: readonly IsolationPoint[]
  steps: readonly LockoutStep<JsxElement>[]
}

/** The lockout of a page, put together from the sources that it names and the steps of a body: the page's own, or that of a translation. */
export function lockoutOfPage(page: Page<'lockout'>, graph: Graph, body: Root = page.body): Lockout {
  const sources = graph.sourcesOf(page)
  const points = [...new Set(sources.flatMap(({ isolation }) => isolation))]
  const steps = composeSequence<JsxElement>({
    sources: sources.map((source) => ({
      id: source.id.value,
      points: source.isolation.map(({ point }) => point.value),
      stored: source.stored,
      waits: waitInSequence(source) !== undefined,
      reaccumulates: source.reaccumulates,
      voltageTest: source.verify.by.includes('voltage-test'),
      tryOut: source.verify.by.includes('try-out'),
    })),
    tagged: new Set(points.flatMap(({ point, tagOut }) => (tagOut ? [point.value] : []))),
    written: writtenSteps(body),
    tools: (page.frontmatter.tools ?? []).length > 0,
  })
  return { page, sources, points, steps }
}

/**
 * The wait that a sequence holds for a source, or what is missing for it. None where an act makes it harmless, where
 * nothing is said of what it stores, where the time to vent a receiver is not known: its gauge tells, and where a hot body would cool by itself: it is drained, or measured until it is cool.
 */
export function waitInSequence(source: EnergySource): Wait | NotComputed | undefined {
  const wait = waitOfSource(source)
  if (!wait) return undefined
  if ('notComputed' in wait) return wait.notComputed.includes('store') || source.stores.every(({ kind }) => kind === 'receiver') ? undefined : wait
  return wait.of === 'hot-body' && wait.basis === 'computed' ? undefined : wait
}

/** The steps of the author, with the phase of the `<Steps>` that they stand in. */
export function writtenSteps(body: Root): WrittenStep<JsxElement>[] {
  return body.children.flatMap((node) => {
    if (isMark(node)) return writtenSteps(asRoot(node)).map((step) => ({ ...step, text: inside(node, step.text) }))
    const phase = phaseOf(node)
    if (phase === undefined) return []
    return stepsIn(node).map((step) => ({ phase, text: step, point: attributeOf(step, 'point'), source: attributeOf(step, 'source') }))
  })
}

/** A part of a translation that is older than its source, or shown in the language of the source. */
export function isMark(node: Nodes): node is JsxElement {
  return isElement(node) && (node.name === 'Older' || node.name === 'FromSource')
}

function inside(mark: JsxElement, step: JsxElement): JsxElement {
  return { ...step, children: [{ ...mark, children: step.children }] } as JsxElement
}

/** The phase of `<Steps>` in a lockout; undefined for every other node. */
export function phaseOf(node: Nodes): WrittenPhase | undefined {
  const written = isElement(node) && node.name === 'Steps' ? attributeOf(node, 'phase') : undefined
  return writtenPhases.find((phase) => phase === written)
}

function asRoot({ children }: JsxElement): Root {
  return { type: 'root', children: children as RootContent[] }
}

function stepsIn(node: Nodes): JsxElement[] {
  if (isElement(node) && node.name === 'Step') return [node]
  return 'children' in node ? node.children.flatMap((child) => stepsIn(child)) : []
}
