import type { Wired } from '../../checkout/wiring.ts'
import { atMost } from '../../signals/verdict.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const fuseBelowLoad: Rule = {
  id: 'fuse-below-load',
  severity: 'warning',
  summary: 'The fuse of a device is smaller than the current that the device takes.',
  why: 'The fuse blows in service, or the technician looks for a fuse of the wrong size.',
  source: 'common practice',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, wired } of graph.made(checkouts)) {
      const [it] = wired
      const fuse = it?.values.placed('fuseA')
      const taken = it && currentA(it)
      if (!fuse || taken === undefined || atMost(taken, fuse.value) || !isNew(fuse.place)) continue
      yield {
        message: `\`${device.tag.value}\` takes ${figure(taken)} A, and its fuse is ${figure(fuse.value)} A`,
        place: fuse.place,
        help: 'look at the drawing and at the fuse itself, and correct the one that is wrong',
      }
    }
  },
}

/** What the device takes by itself in A: the least that its branch carries while it works. */
function currentA({ values }: Wired): number | undefined {
  const [ratedA, ownMa] = [values.number('ratedA'), values.number('noLoadCurrentMa')]
  if (ratedA) return ratedA.value
  if (ownMa) return ownMa.value / 1000
  const [volts, watts] = [values.number('coilV') ?? values.number('ratedV'), values.number('coilW') ?? values.number('ratedW')]
  return volts && watts && watts.value / volts.value
}
