import type { Words } from '../../model/words.ts'
import { contradictions } from '../description-facts.ts'
import type { Rule } from '../rule.ts'

export const valueAgainstDescription: Rule = {
  id: 'value-against-description',
  severity: 'warning',
  summary: 'A value of checkout.yaml is not the one that the description of the part or card gives.',
  why: 'A good reading is taken for a fault, or the wrong part is ordered.',
  source: 'house rule',

  *check({ checkout, cards, sourceLanguage }, graph) {
    if (!checkout) return
    const ofCards = new Map(cards.map(({ card, description }) => [card.value, description]))
    const described = (name: string): Words | undefined => graph.part(name)?.description ?? ofCards.get(name)
    for (const entry of [...checkout.cards, ...checkout.parts]) {
      const text = described(entry.name.value)?.[sourceLanguage]
      if (!text) continue
      for (const { key, written, says, place } of contradictions(entry, text.value))
        yield {
          message: `\`${key}\` of \`${entry.name.value}\` is ${written}, and its description says "${says.trim()}"`,
          place,
          related: [{ label: 'the description', place: text.place }],
          help: 'look at the data sheet, and correct the one that is wrong',
        }
    }
  },
}
