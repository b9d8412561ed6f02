import type { Nodes, Root } from 'mdast'
import { compareWords } from '../../hazard/signal-word.ts'
import type { Problem } from '../../source/finding.ts'
import { type Flow, type FlowMessage, isSteps, mayHoldBlocks, messageFlows } from '../message-flow.ts'
import type { Rule } from '../rule.ts'

export const messageOutOfOrder: Rule = {
  id: 'message-out-of-order',
  severity: 'warning',
  summary: 'Before the steps of a task a safety message stands before another of a greater harm.',
  why: 'Who reads only the first lines must have read of the greatest harm.',
  source: 'common practice: DANGER, WARNING, CAUTION, NOTICE; a chapter without steps may be in another order, such as by place',

  *check(_machine, graph) {
    for (const flow of messageFlows(graph)) yield* groupsIn(beforeSteps(flow.text.body), flow)
  },
}

/** A text up to its last list of steps: what stands behind it, or on a page without steps, may be grouped by what threatens. */
function beforeSteps(body: Root): Root {
  return { ...body, children: body.children.slice(0, body.children.findLastIndex(isSteps) + 1) }
}

/** Messages that follow each other without anything between them are a group. */
function* groupsIn(node: Nodes, flow: Flow): Iterable<Problem> {
  if (!mayHoldBlocks(node)) return
  let weakest: FlowMessage | undefined
  for (const child of node.children) {
    if (child.type === 'text' && child.value.trim() === '') continue
    const message = flow.messageAt(child)
    if (!message) {
      weakest = undefined
      yield* groupsIn(child, flow)
      continue
    }
    if (message.word === undefined) continue
    if (weakest?.word && compareWords(message.word, weakest.word) < 0)
      yield {
        message: `the message \`${message.word}\` stands after one that says \`${weakest.word}\``,
        place: message.place(),
        related: [{ label: `\`${weakest.word}\` stands here`, place: weakest.place() }],
        help: 'put the messages of a group in the order danger, warning, caution, notice',
      }
    else weakest = message
  }
}
