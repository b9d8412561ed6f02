import { sameAddress } from '../../model/controller-address.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const tooManySignals: Rule = {
  id: 'too-many-signals',
  severity: 'error',
  summary: 'More signals name a card than it has channels.',
  why: 'Some of them are on another card, and the technician opens the wrong one.',
  source: 'house rule',

  *check(machine) {
    const onCard = Map.groupBy(ioPoints(machine), ({ card }) => card?.value)
    for (const { card, type, channels } of machine.cards) {
      // A counter or an encoder has several addresses on one channel.
      if (type.value === 'CNT' || type.value === 'ENC') continue
      const points = onCard.get(card.value) ?? []
      // Where channels are written each one is checked by itself.
      if (points.some(({ channel }) => channel)) continue
      const addresses = new Map(points.map((point) => [sameAddress(point.address.value), point]))
      const surplus = [...addresses.values()][channels.value]
      if (!surplus) continue
      yield {
        message: `card \`${card.value}\` has ${channels.value} channels, and ${addresses.size} signals`,
        place: channels.place,
        related: [{ label: `signal ${channels.value + 1}`, place: surplus.card?.place ?? surplus.place }],
        help: 'correct the card of the surplus signals, or the number of channels',
      }
    }
  },
}
