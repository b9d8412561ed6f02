import type { Problem } from '../../source/finding.ts'
import type { Flow } from '../message-flow.ts'
import { instructs, isSteps, messageFlows } from '../message-flow.ts'
import type { Rule } from '../rule.ts'

export const messageAfterStep: Rule = {
  id: 'message-after-step',
  severity: 'error',
  summary: 'A safety message stands after the step that it guards.',
  why: 'The reader has done the step before the warning is read.',
  source: 'ANSI Z535.6, in its manner: an embedded message stands in or directly before its step',
  guards: 'people',

  *check(_machine, graph) {
    for (const flow of messageFlows(graph)) {
      for (const { children } of flow.steps()) yield* inStep(children, flow)
      yield* behindSteps(flow)
    }
  },
}

function* inStep(children: readonly Parameters<typeof instructs>[0][], { messageAt }: Flow): Iterable<Problem> {
  for (const [index, child] of children.entries()) {
    const message = messageAt(child)
    if (!message || !children.slice(0, index).some(instructs) || children.slice(index).some(instructs)) continue
    yield {
      message: 'the safety message stands after what the step tells to do',
      place: message.place(),
      help: 'put it first in the step, before the words',
    }
  }
}

/** Messages that say they belong to a step, with steps before them in their section and none after. */
function* behindSteps({ text: { body }, messageAt }: Flow): Iterable<Problem> {
  let stepsBefore = false
  for (const [index, child] of body.children.entries()) {
    if (child.type === 'heading') stepsBefore = false
    else if (isSteps(child)) stepsBefore = true
    const message = messageAt(child)
    if (message?.kind !== 'embedded' || !stepsBefore) continue
    const after = body.children.slice(index + 1)
    const end = after.findIndex(({ type }) => type === 'heading')
    if (after.slice(0, end === -1 ? undefined : end).some(isSteps)) continue
    yield {
      message: 'the safety message stands after the last step of its section',
      place: message.place(),
      help: 'put it into the step that it guards, before the words',
    }
  }
}
