import { phaseOf } from '../../energy/lockout-of-page.ts'
import { isSteps, messageFlows } from '../message-flow.ts'
import type { Rule } from '../rule.ts'

export const sectionMessageAfterStep: Rule = {
  id: 'section-message-after-step',
  severity: 'error',
  summary: 'A safety message that holds for a section does not stand before its first step.',
  why: 'It holds for steps that the reader has done before it is read.',
  source: 'ANSI Z535.6, in its manner: a section message stands at the beginning of its section',
  guards: 'people',

  *check(_machine, graph) {
    for (const { text, steps, messageAt } of messageFlows(graph)) {
      for (const { children } of steps())
        for (const message of children.flatMap((child) => messageAt(child) ?? []))
          if (message.kind === 'section' || message.kind === 'grouped')
            yield {
              message: `a \`${message.kind}\` message stands inside a step`,
              place: message.place(),
              help: 'put it before the first step of the section, or write `kind="embedded"` if it guards this step alone',
            }
      let behind = false
      // What stands between the phases of a lockout is shown at the head of the next.
      const lastPhase = text.body.children.findLastIndex((child) => phaseOf(child) !== undefined)
      for (const [index, child] of text.body.children.entries()) {
        if (child.type === 'heading') behind = false
        else if (isSteps(child)) behind = true
        const message = messageAt(child)
        // One that says that it belongs to a step is judged by its step.
        if (!message || !behind || index < lastPhase || message.kind === 'embedded') continue
        yield {
          message: 'the safety message stands after the first step of its section',
          place: message.place(),
          help: 'put it before the first step; if it guards later steps alone, put it into the first of them, or begin a section with a heading above it',
        }
      }
    }
  },
}
