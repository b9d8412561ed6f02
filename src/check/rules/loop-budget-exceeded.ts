import { ohmPerKm } from '../../checkout/wiring.ts'
import { largestLoop, loopResistance } from '../../signals/loop-budget.ts'
import { atMost } from '../../signals/verdict.ts'
import { checkouts, figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const loopBudgetExceeded: Rule = {
  id: 'loop-budget-exceeded',
  severity: 'error',
  summary: 'Card and cable of a 4-20 mA loop leave the transmitter too little voltage.',
  why: 'The current sticks below 20 mA: high values are never shown, and no failure is.',
  source: 'Ohm’s law; NAMUR NE 43 for the failure current',

  *check(_, graph) {
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      if (checkout.technology !== 'current-loop') continue
      for (const it of wired) {
        const { values, ofCard, supply, signal } = it
        // The least supply counts: a loop that works on a good day only is none.
        const supplyV = (supply?.lowestV ?? supply?.nominalV)?.value
        const [transmitterV, highestCurrentMa] = [values.number('transmitterV'), values.number('highestCurrentMa')]
        const loop = loopResistance({ cardOhm: ofCard.number('cardOhm'), lengthM: values.number('cableLengthM'), resistanceOhmPerKm: ohmPerKm(it) })
        const most = largestLoop({ supplyV, transmitterV, highestCurrentMa })
        const place = values.placed('cableLengthM')?.place ?? signal?.tag.place ?? device.tag.place
        if (supplyV !== undefined && transmitterV && supplyV < transmitterV.value) {
          yield {
            message: `\`${device.tag.value}\` needs ${figure(transmitterV.value)} V, and its supply may fall to ${figure(supplyV)} V`,
            place: values.placed('transmitterV')?.place ?? place,
            help: 'correct the supply or the voltage of the transmitter',
          }
        }
        if (!('value' in loop) || !('value' in most) || atMost(loop.value, most.value)) continue
        yield {
          message: `the loop of \`${device.tag.value}\` has ${figure(loop.value)} Ω, and ${figure(most.value)} Ω at most leave it its voltage`,
          place,
          note: `${most.formula} at ${figure(supplyV ?? 0)} V; ${loop.formula}`,
          help: 'shorten or thicken the cable, use a card with less resistance, or a supply that falls less',
        }
      }
    }
  },
}
