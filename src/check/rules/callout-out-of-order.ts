import { markedPictures } from '../callouts.ts'
import type { Rule } from '../rule.ts'

export const calloutOutOfOrder: Rule = {
  id: 'callout-out-of-order',
  severity: 'error',
  summary: 'The marks of a picture are not numbered 1, 2, 3.',
  why: 'The reader looks for a number that is missing, or finds one number at two places.',
  source: 'house rule',

  *check(_machine, graph) {
    for (const { callouts } of markedPictures(graph)) {
      const seen = new Map<number, (typeof callouts)[number]>()
      let isSound = true
      for (const callout of callouts) {
        const first = seen.get(callout.number)
        if (!first) {
          seen.set(callout.number, callout)
          continue
        }
        isSound = false
        yield {
          message: `two callouts of one picture have the number ${callout.number}`,
          place: callout.place('n'),
          related: [{ label: 'the first one', place: first.place('n') }],
          help: `write ${callouts.indexOf(callout) + 1}, the next number of this picture`,
        }
      }
      // After a number that stands twice the following ones may be right or not. What is no number is reported by itself.
      if (!isSound || callouts.some(({ number }) => Number.isNaN(number))) continue
      const wrong = callouts.find(({ number }, index) => number !== index + 1)
      if (wrong)
        yield {
          message: `callout ${wrong.number} stands where ${callouts.indexOf(wrong) + 1} is expected`,
          place: wrong.place('n'),
          help: 'number the callouts of a picture 1, 2, 3 in the order in which they are written',
        }
    }
  },
}
