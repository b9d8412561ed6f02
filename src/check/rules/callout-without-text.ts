import { namePlace } from '../../model/placed-messages.ts'
import { markedPictures } from '../callouts.ts'
import { instructs } from '../message-flow.ts'
import type { Rule } from '../rule.ts'

export const calloutWithoutText: Rule = {
  id: 'callout-without-text',
  severity: 'error',
  summary: 'A mark on a picture does not say what it marks.',
  why: 'The reader sees a number and does not learn what it is. Who cannot see the picture learns nothing.',
  source: 'house rule; WCAG 2.2, 1.1.1: what a picture tells stands in words too',

  *check(_machine, graph) {
    for (const { callouts, text } of markedPictures(graph))
      for (const { element, number } of callouts)
        if (!element.children.some(instructs))
          yield {
            message: `callout ${number} says nothing`,
            place: namePlace(element, text),
            help: `write what stands there: \`<Callout …>Clamping screw</Callout>\``,
          }
  },
}
