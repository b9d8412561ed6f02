import type { CheckoutNumberName } from '../../model/schema/checkout-values.ts'
import type { Problem } from '../../source/finding.ts'
import { checkouts, type DeviceCheckout } from '../checkouts.ts'
import { beyondElement } from '../element-range.ts'
import type { Rule } from '../rule.ts'

export const impossibleCheckoutValue: Rule = {
  id: 'impossible-checkout-value',
  severity: 'error',
  summary: 'What is given of a device, its part or its card cannot be.',
  why: 'No reading can be told from it.',
  source: 'house rule',

  *check(_, graph) {
    const seen = new Set<string>()
    for (const it of graph.made(checkouts)) {
      const { device, checkout, wired } = it
      yield* exchanged(it, seen)
      const keys = wired.flatMap(({ values, ofCard }) => [...values.entries, ...ofCard.entries]).flatMap((entry) => entry.keys)
      const isBeyond = wired.some((signal) => beyondElement(signal) !== undefined)
      for (const { impossible, at } of checkout.expectations) {
        // A range for which the element is not defined is reported as such.
        if (!impossible || (at && isBeyond)) continue
        const { why, of } = impossible
        // Those that the reason names come first. Values of the I/O list that cannot be are found where they stand.
        const named = of.filter((name) => [...why.matchAll(/`(\w+)`/g)].some(([, quantity = '-']) => name.startsWith(quantity)))
        const [place, ...others] = [...new Set([...named, ...of])].flatMap((name) => keys.find(({ value }) => value === name)?.place ?? [])
        const key = `${place?.line}:${place?.column} ${why}`
        if (!place || seen.has(key)) continue
        seen.add(key)
        yield {
          message: `what \`${device.tag.value}\` should read cannot be: ${why}`,
          place,
          related: others.slice(0, 1).map((it) => ({ label: 'it stands against', place: it })),
          help: 'correct the one that is wrong',
        }
      }
    }
  },
}

/** Of each pair the first is less than the second. */
const rising: readonly (readonly [CheckoutNumberName, CheckoutNumberName])[] = [
  ['lowestSupplyV', 'highestSupplyV'],
  ['lowestShare', 'highestShare'],
  ['classFromC', 'classToC'],
  ['failureLowToMa', 'failureHighFromMa'],
  ['certainBreakMa', 'possibleBreakMa'],
  ['possibleBreakMa', 'highImpedanceMa'],
  ['highImpedanceMa', 'lowImpedanceMa'],
  ['lowImpedanceMa', 'possibleShortMa'],
  ['possibleShortMa', 'certainShortMa'],
]

function* exchanged({ device, wired }: DeviceCheckout, seen: Set<string>): Iterable<Problem> {
  const values = wired[0]?.values
  for (const [lower, higher] of rising) {
    const [low, high] = [values?.placed(lower), values?.placed(higher)]
    const key = `${low?.place.line}:${low?.place.column} ${lower}`
    if (!low || !high || low.value < high.value || seen.has(key)) continue
    seen.add(key)
    yield {
      message: `what \`${device.tag.value}\` should read cannot be: \`${lower}\` must be less than \`${higher}\``,
      place: low.place,
      related: [{ label: 'it stands against', place: high.place }],
      help: 'correct the one that is wrong',
    }
  }
}
