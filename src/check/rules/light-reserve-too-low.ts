import { excessGain, neededGain } from '../../signals/photoelectric.ts'
import { atLeast } from '../../signals/verdict.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const lightReserveTooLow: Rule = {
  id: 'light-reserve-too-low',
  severity: 'warning',
  summary: 'A through-beam sensor has less light in reserve than its air asks for.',
  why: 'It fails between two cleanings.',
  source: 'common practice: the gain that guidelines ask for; of dirty air from memory',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      const values = wired[0]?.values
      const [rated, range, air] = [values?.placed('ratedRangeM'), values?.placed('rangeM'), values?.placedChoice('air')]
      if (checkout.technology !== 'photoelectric-through-beam' || !rated || !range || !air) continue
      const gain = excessGain('through-beam', { ratedRangeM: rated.value, rangeM: range.value })
      // Beyond its range is reported as such.
      if (!('value' in gain) || gain.value < 1) continue
      const needed = neededGain[air.value].value
      if (atLeast(gain.value, needed) || !isNew(range.place, air.place)) continue
      yield {
        message: `\`${device.tag.value}\` gets ${figure(gain.value)} times the light that it needs, and \`air: ${air.value}\` asks for ${figure(needed)} times`,
        place: air.place,
        related: [{ label: 'the distance', place: range.place }],
        note: `${gain.formula}: ${figure(rated.value)} m rated, ${figure(range.value)} m as mounted`,
        help: 'mount it nearer, fit one with a longer range, keep the air at it clean, or correct the data',
      }
    }
  },
}
