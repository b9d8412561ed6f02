import { synchronousSpeed } from '../../signals/motor.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const speedAgainstPoles: Rule = {
  id: 'speed-against-poles',
  severity: 'warning',
  summary: 'The rated speed of a motor does not go with its poles and frequency.',
  why: 'A good motor is taken for one that slips, or a slipping one for good.',
  source: 'field of a three-phase motor: nₛ = 120·f/p',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, wired } of graph.made(checkouts)) {
      const values = wired[0]?.values
      const [speed, poles, frequencyHz] = [values?.placed('ratedSpeedPerMin'), values?.placed('poles'), values?.number('frequencyHz')]
      if (!speed || !poles || !frequencyHz) continue
      const [own, next] = [synchronousSpeed({ frequencyHz, poles: poles.value }), synchronousSpeed({ frequencyHz, poles: poles.value + 2 })]
      if (!('value' in own) || !('value' in next)) continue
      // Under its rated load a motor turns slower than its field, and faster than that of a motor with two poles more.
      if ((speed.value <= own.value && speed.value > next.value) || !isNew(speed.place, poles.place)) continue
      yield {
        message: `\`${device.tag.value}\` turns at ${figure(speed.value)} min⁻¹ under load, and its field with ${figure(poles.value)} poles at ${figure(own.value)} min⁻¹`,
        place: speed.place,
        related: [{ label: 'the poles', place: poles.place }],
        help: 'correct the one that is wrong: speed, poles or frequency',
      }
    }
  },
}
