import { checkouts } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const impossibleCheckoutValue: Rule = {
  id: 'impossible-checkout-value',
  severity: 'error',
  summary: 'What is given of a device, its part or its card cannot be.',
  why: 'No reading can be told from it.',
  source: 'house rule',

  *check(_, graph) {
    const seen = new Set<string>()
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      const keys = wired.flatMap(({ values, ofCard }) => [...values.entries, ...ofCard.entries]).flatMap((entry) => entry.keys)
      for (const { impossible } of checkout.expectations) {
        if (!impossible) continue
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
