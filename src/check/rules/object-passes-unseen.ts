import type { Wired } from '../../checkout/wiring.ts'
import { leastObjectLength } from '../../signals/photoelectric.ts'
import { atLeast } from '../../signals/verdict.ts'
import { checkouts, figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const objectPassesUnseen: Rule = {
  id: 'object-passes-unseen',
  severity: 'warning',
  summary: 'The shortest object passes a photoelectric sensor before the controller sees it.',
  why: 'Objects are missed at full speed only, and every check with a still object is good.',
  source: 'response, input filter and program cycle each delay the signal; common practice',

  *check(_, graph) {
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      if (!checkout.technology.startsWith('photoelectric')) continue
      for (const it of wired) {
        const length = it.values.placed('objectLengthMm')
        const least = certainLeast(it)
        if (!length || least === undefined || atLeast(length.value, least)) continue
        const speed = it.values.placed('objectSpeedMPerS')
        yield {
          message: `\`${device.tag.value}\` misses objects of ${figure(length.value)} mm: at this speed they take ${figure(least)} mm to be seen`,
          place: length.place,
          ...(speed ? { related: [{ label: 'the speed', place: speed.place }] } : {}),
          help: 'use a faster input or sensor, let the objects pass slower, or correct the data',
        }
      }
    }
  },
}

/** With what is not given counted as no delay: what is shorter is missed for certain. */
function certainLeast({ values, ofCard }: Wired): number | undefined {
  const given = {
    objectSpeedMPerS: values.number('objectSpeedMPerS'),
    responseMs: values.number('responseMs') ?? 0,
    filterMs: ofCard.number('filterMs') ?? 0,
    scanMs: ofCard.number('scanMs') ?? 0,
    beamWidthMm: values.number('beamWidthMm') ?? 0,
  }
  const found = leastObjectLength(given)
  return 'value' in found ? found.value : undefined
}
