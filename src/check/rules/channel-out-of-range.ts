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
      const inEights = countsInEights(points.map(({ digits }) => digits))
      const fromZero = inEights || points.some(({ digits }) => Number(digits) === 0)
      for (const { digits, channel } of points) {
        const number = Number.parseInt(digits, inEights ? 8 : 10)
        if (number < channels.value || (number === channels.value && !fromZero)) continue
        yield {
          message: `card \`${card.value}\` has no channel \`${channel.value}\``,
          place: channel.place,
          related: [
            {
              label: `it has ${channels.value} channels${fromZero ? ', counted from 0' : ''}${inEights ? ' in eights: 0 to 7, 10 to 17' : ''}`,
              place: channels.place,
            },
          ],
          help: 'correct the channel or the card',
        }
      }
    }
  },
}

/** 10 comes after 7, as on controllers that count their points in octal. Common practice. */
function countsInEights(written: readonly string[]): boolean {
  const numbers = new Set(written.map(Number))
  return numbers.has(7) && numbers.has(10) && !written.some((digits) => /[89]/.test(digits))
}

/** A channel that is a number, with or without letters before it; `0.3` and other forms are not compared. */
function numbered({ channel }: Signal) {
  const [, digits] = (channel && /^[^\d.]*(\d+)$/.exec(channel.value)) ?? []
  return channel && digits !== undefined ? { channel, digits } : undefined
}
