import { atMost } from '../../signals/verdict.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const sensorBeyondRange: Rule = {
  id: 'sensor-beyond-range',
  severity: 'error',
  summary: 'A photoelectric sensor stands further from what it sees than its rated range.',
  why: 'It works while everything is new and clean, and fails with the first dirt on the lens.',
  source: 'IEC 60947-5-2, rated range; curves of data sheets',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, wired } of graph.made(checkouts)) {
      const [rated, range] = [wired[0]?.values.placed('ratedRangeM'), wired[0]?.values.placed('rangeM')]
      if (!rated || !range || atMost(range.value, rated.value) || !isNew(range.place)) continue
      yield {
        message: `\`${device.tag.value}\` is mounted to work over ${figure(range.value)} m, and its rated range is ${figure(rated.value)} m`,
        place: range.place,
        related: [{ label: 'the rated range', place: rated.place }],
        help: 'mount it nearer, fit one with a longer range, or correct the data',
      }
    }
  },
}
