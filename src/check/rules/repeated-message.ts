import { messageFlows } from '../message-flow.ts'
import type { Rule } from '../rule.ts'

export const repeatedMessage: Rule = {
  id: 'repeated-message',
  severity: 'note',
  summary: 'The same safety message stands in one step after the other.',
  why: 'A reader who meets the same words again skips them, and skips the next message too.',
  source: 'ANSI Z535.6, in its manner, from memory: overuse',

  *check(_machine, graph) {
    for (const { steps, messageAt } of messageFlows(graph))
      for (const list of Map.groupBy(steps(), (step) => step.list).values()) {
        const messages = list.map(({ children }) => children.flatMap((child) => messageAt(child) ?? []))
        for (const [index, own] of messages.entries())
          for (const message of own) {
            const before = messages[index - 1]?.find(({ key }) => key() === message.key())
            if (!before) continue
            yield {
              message: 'the step before has the same safety message',
              place: message.place(),
              related: [{ label: 'it stands here already', place: before.place() }],
              help: 'put it once before the steps',
            }
          }
      }
  },
}
