import { eventsOf } from '../../checkout/proximity.ts'
import type { Wired } from '../../checkout/wiring.ts'
import type { CheckoutNumber } from '../../model/checkout-data.ts'
import { encoderFrequency, flowFrequency } from '../../signals/pulses.ts'
import { atMost } from '../../signals/verdict.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const pulsesTooFast: Rule = {
  id: 'pulses-too-fast',
  severity: 'error',
  summary: 'A device gives more pulses in service than its card counts.',
  why: 'The controller misses pulses, and position or flow are wrong at full speed only.',
  source: 'the data sheet of the card; a pulse and the pause after it must each outlast an input filter',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, wired } of graph.made(checkouts))
      for (const it of wired) {
        const pulses = pulsesOf(it)
        const [most, filter] = [it.ofCard.placed('highestHz'), it.ofCard.placed('filterMs')]
        const limits = [
          ...(most ? [{ hz: most.value, place: most.place }] : []),
          ...(filter && filter.value > 0 ? [{ hz: 1000 / (2 * filter.value), place: filter.place }] : []),
        ]
        const limit = limits.toSorted((a, b) => a.hz - b.hz)[0]
        if (!pulses || !limit || atMost(pulses.hz, limit.hz) || !isNew(pulses.of.place, limit.place)) continue
        yield {
          message: `\`${device.tag.value}\` gives ${figure(pulses.hz)} Hz in service, and card \`${it.signal?.card?.value}\` follows ${figure(limit.hz)} Hz`,
          place: pulses.of.place,
          related: [{ label: 'the card', place: limit.place }],
          help: 'use an input that counts faster or filters less, or correct the data',
        }
      }
  },
}

/** What arrives at an input in Hz. */
function pulsesOf({ values, device }: Wired): { hz: number; of: CheckoutNumber } | undefined {
  const [events, flow, speed] = [eventsOf(values), values.placed('flowLPerMin'), values.placed('speedPerMin')]
  if (events) return { hz: events.stated.value, of: events.of }
  const technology = device.technology?.value
  const result =
    technology === 'encoder'
      ? encoderFrequency({ pulsesPerTurn: values.number('pulsesPerTurn'), speedPerMin: values.number('speedPerMin') })
      : flowFrequency({ pulsesPerLitre: values.number('pulsesPerLitre'), flowLPerMin: values.number('flowLPerMin') })
  const of = technology === 'encoder' ? speed : flow
  return of && 'value' in result ? { hz: result.value, of } : undefined
}
