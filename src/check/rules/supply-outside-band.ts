import { checkouts, figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const supplyOutsideBand: Rule = {
  id: 'supply-outside-band',
  severity: 'error',
  summary: 'A supply may fall or rise beyond what a device on it is made for.',
  why: 'The device works until the supply is loaded, and every reading at rest is good.',
  source: 'house rule',

  *check(_, graph) {
    const seen = new Set<string>()
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      const { supply } = checkout
      const values = wired[0]?.values
      if (!supply || !values) continue
      const [least, most] = [values.placed('lowestSupplyV'), values.placed('highestSupplyV')]
      // Limits that stand against each other are reported as such.
      if (least && most && least.value >= most.value) continue
      const [lowest, highest] = [supply.lowestV ?? supply.nominalV, supply.highestV ?? supply.nominalV]
      const name = `supply \`${supply.name.value}\``
      const wrong = [
        ...(least && lowest.value < least.value
          ? [{ says: `${name} may fall to ${figure(lowest.value)} V, and`, limit: least, of: lowest, is: 'needs' }]
          : []),
        ...(most && highest.value > most.value
          ? [{ says: `${name} may rise to ${figure(highest.value)} V, and`, limit: most, of: highest, is: 'bears' }]
          : []),
      ]
      for (const { says, limit, of, is } of wrong) {
        // Devices of one part share the value: it is said once.
        const key = `${supply.name.value} ${limit.place.line}:${limit.place.column}`
        if (seen.has(key)) continue
        seen.add(key)
        yield {
          message: `${says} \`${device.tag.value}\` ${is} ${figure(limit.value)} V`,
          place: limit.place,
          related: [{ label: 'the supply', place: of.place }],
          help: 'correct the limits, or feed the device from another supply',
        }
      }
    }
  },
}
