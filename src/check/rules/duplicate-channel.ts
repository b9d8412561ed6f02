import { sameAddress } from '../../model/controller-address.ts'
import { normalise } from '../../model/designation.ts'
import type { Signal } from '../../model/machine.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const duplicateChannel: Rule = {
  id: 'duplicate-channel',
  severity: 'error',
  summary: 'Two signals are on the same channel of a card.',
  why: 'One of them is wrong, and a technician measures at the wrong channel.',
  source: 'house rule',

  *check(machine) {
    const first = new Map<string, Signal>()
    for (const point of ioPoints(machine)) {
      const { card, channel } = point
      if (!card || !channel) continue
      const key = JSON.stringify([card.value, normalise(channel.value)])
      const known = first.get(key)
      if (!known) first.set(key, point)
      else if (!belongTogether(known, point))
        yield {
          message: `channel \`${channel.value}\` of card \`${card.value}\` is used twice`,
          place: channel.place,
          related: [{ label: 'first used here', place: known.channel?.place ?? known.place }],
          help: 'correct one of the channels',
        }
    }
  },
}

/** An encoder or a transmitter may give several values over one channel. One address twice is reported as such. */
function belongTogether(a: Signal, b: Signal): boolean {
  if (sameAddress(a.address.value) === sameAddress(b.address.value)) return true
  return a.tag.value === b.tag.value && !/^S?D[IO]$/.test(b.type.value)
}
