import type { PhrasingContent, Root, RootContent } from 'mdast'
import { isMark, type Lockout, phaseOf } from '../energy/lockout-of-page.ts'
import type { LockoutStep } from '../energy/lockout-sequence.ts'
import { type LockoutPhase, lockoutPhases } from '../model/lockout-phases.ts'
import { isElement, type JsxElement } from '../model/mdx-elements.ts'
import { type ComposedText, composedText, type Piece, type Speaker } from './lockout-text.ts'

/** Name of the element that says what is still live after a step. */
export const stillEnergisedName = 'StillEnergised'

/** The body of a lockout, cut up and put together by phase. */
export interface LockoutBody {
  /** What stands before the first phase: messages for the whole of it. */
  before: Root
  phases: readonly { phase: LockoutPhase; body: Root }[]
  /** What the author wrote after the last phase. */
  after: Root
}

/** Puts the written and the composed steps of a lockout into one body a phase; messages between them stand at the head of their phase. */
export function lockoutBody(shown: Root, lockout: Lockout, speaker: Speaker): LockoutBody {
  const between = betweenPhases(shown)
  const name = (id: string) => {
    const source = lockout.sources.find((it) => it.id.value === id)
    return source ? speaker.say(source.name).text : id
  }
  const phases = lockoutPhases.map((phase) => {
    const steps = lockout.steps.flatMap((step, index) =>
      step.phase === phase ? withLive(stepNode(step, lockout, speaker), lockout.steps[index - 1], step, name) : [],
    )
    return { phase, body: root([...(between.get(phase) ?? []), element('Steps', {}, steps)]) }
  })
  return {
    before: root(between.get('before') ?? []),
    phases: phases.filter(({ body }) => body.children.length > 0),
    after: root(between.get('after') ?? []),
  }
}

/** What is no step, by the phase of the next steps. */
function betweenPhases({ children }: Root): Map<LockoutPhase | 'before' | 'after', RootContent[]> {
  const groups = new Map<LockoutPhase | 'before' | 'after', RootContent[]>()
  let waiting: RootContent[] = []
  let begun = false
  for (const node of children) {
    const inner = isMark(node) ? (node.children as RootContent[]) : [node]
    const phase = inner.map(phaseOf).find((it) => it !== undefined)
    const rest = inner.filter((it) => phaseOf(it) === undefined)
    if (rest.length > 0) waiting.push(isMark(node) ? ({ ...node, children: rest } as RootContent) : node)
    if (phase === undefined) continue
    const at = begun ? (phase === 'restore' ? 'release' : phase) : 'before'
    groups.set(at, [...(groups.get(at) ?? []), ...waiting])
    waiting = []
    begun = true
  }
  groups.set(begun ? 'after' : 'before', waiting)
  return groups
}

function stepNode(step: LockoutStep<JsxElement>, lockout: Lockout, speaker: Speaker): JsxElement {
  if (step.text) return step.text
  const { pieces, result }: ComposedText = composedText(step, lockout, speaker)
  const said = (all: readonly Piece[]) => paragraph(all.map((piece) => phrasing(piece, speaker)))
  return element('Step', whatItSets(step, lockout, speaker), [said(pieces), ...(result ? [element('Result', {}, [said([{ said: result }])])] : [])])
}

/** What a sheet needs to say steps that do the same to several points in one: act, point, device, and the position that is set. */
function whatItSets({ act, point: id }: LockoutStep<unknown>, { points }: Lockout, { say }: Speaker): Record<string, string> {
  const point = points.find((it) => it.point.value === id)
  if (!point || (act !== 'set-safe' && act !== 'set-service' && act !== 'lock')) return {}
  const position = act === 'lock' ? '' : say(act === 'set-safe' ? point.safe : point.service).text
  return { act, at: point.point.value, device: point.tag.value, position }
}

/** A step with what is still live after it, where that is not what it was before. */
function withLive(
  node: JsxElement,
  before: LockoutStep<JsxElement> | undefined,
  { stillEnergised }: LockoutStep<JsxElement>,
  name: (id: string) => string,
): JsxElement {
  if (!stillEnergised || (before?.stillEnergised && before.stillEnergised.join() === stillEnergised.join())) return node
  return { ...node, children: [...node.children, element(stillEnergisedName, { names: stillEnergised.map(name).join(', ') }, [])] } as JsxElement
}

function phrasing(piece: Piece, { language }: Speaker): PhrasingContent {
  if (typeof piece === 'string') return { type: 'text', value: piece }
  if ('tag' in piece) return { ...inline('Tag'), attributes: [attribute('id', piece.tag)] }
  const text: PhrasingContent = { type: 'text', value: piece.said.text }
  return piece.said.language === language ? text : { ...inline('span'), attributes: [attribute('lang', piece.said.language)], children: [text] }
}

const inline = (name: string) => ({ type: 'mdxJsxTextElement' as const, name, attributes: [], children: [] as PhrasingContent[] })
const attribute = (name: string, value: string) => ({ type: 'mdxJsxAttribute' as const, name, value })
const paragraph = (children: PhrasingContent[]) => ({ type: 'paragraph' as const, children })
const root = (children: RootContent[]): Root => ({ type: 'root', children })

function element(
  name: string,
  attributes: Readonly<Record<string, string>>,
  children: readonly RootContent[],
): Extract<JsxElement, { type: 'mdxJsxFlowElement' }> {
  return {
    type: 'mdxJsxFlowElement',
    name,
    attributes: Object.entries(attributes).map(([key, value]) => attribute(key, value)),
    children: [...children] as Extract<JsxElement, { type: 'mdxJsxFlowElement' }>['children'],
  }
}

/** Whether a body has something to show. */
export function isEmpty({ children }: Root): boolean {
  return children.every((node) => isElement(node) && node.name === 'Steps' && node.children.length === 0)
}
