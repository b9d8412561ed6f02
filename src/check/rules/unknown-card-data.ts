import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownCardData: Rule = {
  id: 'unknown-card-data',
  severity: 'error',
  summary: 'A card that checkout.yaml describes is neither in the list of cards nor a part.',
  why: 'What it says reaches no card, and nothing is computed from it.',
  source: 'house rule',

  *check({ checkout, cards, parts, absent, unread }) {
    if (!checkout || unread.has('card') || unread.has('part')) return
    const known = new Set([...cards.map(({ card }) => card.value), ...parts.map(({ number }) => number.value)])
    const suggest = suggestFrom(known)
    for (const { name } of checkout.cards) {
      if (known.has(name.value) || absent.has(`card:${name.value}`) || absent.has(`part:${name.value}`)) continue
      yield {
        message: `there is no card and no part \`${name.value}\``,
        place: name.place,
        help: advice(suggest(name.value), 'name', 'add the card to the list of cards, or correct the name'),
      }
    }
  },
}
