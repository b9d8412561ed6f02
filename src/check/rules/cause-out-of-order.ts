import { likelihoods } from '../../model/elements.ts'
import { type PageText, textsOf } from '../../model/machine.ts'
import { attributeOf, elementsOf, type JsxElement } from '../../model/mdx-elements.ts'
import { attributePlace } from '../../model/placed-messages.ts'
import type { Rule } from '../rule.ts'

const order: readonly (string | undefined)[] = likelihoods

export const causeOutOfOrder: Rule = {
  id: 'cause-out-of-order',
  severity: 'warning',
  summary: 'A cause of an alarm stands below one that is less likely.',
  why: 'The reader takes things apart before looking at what it mostly is.',
  source: 'house rule',

  *check({ pages }) {
    for (const text of pages.flatMap(textsOf))
      for (const list of text.elements('Causes')) {
        let before: { cause: JsxElement; rank: number } | undefined
        for (const cause of elementsOf(list, 'Cause')) {
          const likelihood = attributeOf(cause, 'likelihood')
          const rank = order.indexOf(likelihood)
          // Another word is reported as such.
          if (rank < 0) continue
          if (before && rank < before.rank)
            yield {
              message: `this cause is \`${likelihood}\`, and stands below one that is \`${order[before.rank]}\``,
              place: likelihoodPlace(cause, text),
              related: [{ label: 'the less likely one', place: likelihoodPlace(before.cause, text) }],
              help: 'put the causes in the order of their likelihood, or correct one of the two',
            }
          if (!before || rank > before.rank) before = { cause, rank }
        }
      }
  },
}

const likelihoodPlace = (element: JsxElement, text: PageText) => attributePlace({ element, text }, 'likelihood')
