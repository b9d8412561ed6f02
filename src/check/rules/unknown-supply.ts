import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownSupply: Rule = {
  id: 'unknown-supply',
  severity: 'error',
  summary: 'A card, part or device is fed by a supply that checkout.yaml does not have.',
  why: 'No voltage can be computed for anything on it.',
  source: 'house rule',

  *check({ checkout }) {
    if (!checkout) return
    const names = checkout.supplies.map(({ name }) => name.value)
    const suggest = suggestFrom(names)
    for (const { texts } of [...checkout.cards, ...checkout.parts, ...checkout.devices]) {
      if (!texts.supply || names.includes(texts.supply.value)) continue
      yield {
        message: `there is no supply \`${texts.supply.value}\``,
        place: texts.supply.place,
        help: advice(suggest(texts.supply.value), 'supply', 'add it under `supplies`, or correct the name'),
      }
    }
  },
}
