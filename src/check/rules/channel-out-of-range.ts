import type { Signal } from '../../model/machine.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const channelOutOfRange: Rule = {
  id: 'channel-out-of-range',
  severity: 'error',
  summary: 'A signal is on a channel that its card does not have.',
  why: 'The technician looks for a terminal that is not there.',
  source: 'house rule',

  *check(machine) {
    const onCard = Map.groupBy(ioPoints(machine), ({ card }) => card?.value)
    for (const { card, channels } of machine.cards) {
      const points = (onCard.get(card.value) ?? []).flatMap((point) => numbered(point) ?? [])
      const fromZero = points.some(({ number }) => number === 0)
      for (const { number, channel } of points) {
        if (number < channels.value || (number === channels.value && !fromZero)) continue
        yield {
          message: `card \`${card.value}\` has no channel \`${channel.value}\``,
          place: channel.place,
          related: [{ label: `it has ${channels.value} channels${fromZero ? ', counted from 0' : ''}`, place: channels.place }],
          help: 'correct the channel or the card',
        }
      }
    }
  },
}

/** A channel that is a number, with or without letters before it; `0.3` and other forms are not compared. */
function numbered({ channel }: Signal) {
  const [, digits] = (channel && /^[^\d.]*(\d+)$/.exec(channel.value)) ?? []
  return channel && digits !== undefined ? { channel, number: Number(digits) } : undefined
}
