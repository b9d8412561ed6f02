import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const cardWithoutSignals: Rule = {
  id: 'card-without-signals',
  severity: 'note',
  summary: 'No row of the I/O list names a card.',
  why: 'Its page tells nothing, and its signals may be listed under another card.',
  source: 'house rule',

  *check(machine) {
    const points = ioPoints(machine)
    const used = new Set(points.flatMap(({ card }) => (card ? [card.value] : [])))
    const known = new Set(machine.cards.map(({ card }) => card.value))
    // A list without cards says nothing, and a row that is broken or names no known card may be the one.
    if (used.size === 0 || [...used].some((card) => !known.has(card)) || [...machine.absent.keys()].some((name) => name.startsWith('signal:'))) return
    for (const { card } of machine.cards) {
      if (used.has(card.value)) continue
      yield {
        message: `no signal is on card \`${card.value}\``,
        place: card.place,
        help: 'list its channels in the I/O list, as spare where they are free',
      }
    }
  },
}
