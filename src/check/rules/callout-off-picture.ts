import { markedPictures } from '../callouts.ts'
import type { Rule } from '../rule.ts'

export const calloutOffPicture: Rule = {
  id: 'callout-off-picture',
  severity: 'error',
  summary: 'A mark stands beside the picture that it is for.',
  why: 'The reader looks for the number on the picture and does not find it.',
  source: 'house rule',

  *check(_machine, graph) {
    for (const { callouts } of markedPictures(graph))
      for (const { number, xPercent, yPercent, place } of callouts)
        for (const [name, value, side] of [
          ['x', xPercent, 'width'],
          ['y', yPercent, 'height'],
        ] as const)
          if (value < 0 || value > 100)
            yield {
              message: `callout ${number} stands off the picture: \`${name}\` is ${value}`,
              place: place(name),
              help: `write the place in percent of the ${side}, from 0 to 100`,
            }
  },
}
