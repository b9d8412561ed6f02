import { isDistance, safetyDistance } from '../../hazard/safety-distance.ts'
import type { Rule } from '../rule.ts'

export const safetyDistanceTooShort: Rule = {
  id: 'safety-distance-too-short',
  severity: 'error',
  summary: 'A protective device stands nearer to the danger than its stopping time allows.',
  why: 'A person who reaches in is at the danger before the machine stands still.',
  source: 'ISO 13855:2010, S = K·T + C. The risk assessment and a standard for the kind of machine come first',
  guards: 'people',

  *check({ safeguards }) {
    for (const { tag, stopTimeS, distanceMm, device } of safeguards) {
      const least = safetyDistance({ ...device, stopTimeS })
      if (!isDistance(least) || distanceMm.value >= least.distanceMm) continue
      yield {
        message: `\`${tag.value}\` stands ${distanceMm.value} mm from the danger, and its stopping time of ${stopTimeS} s asks for at least ${Math.ceil(least.distanceMm)} mm`,
        place: distanceMm.place,
        related: [{ label: 'the device', place: tag.place }],
        note: `computed with ${least.approachMmPerS} mm/s and ${least.reachMm} mm of reach, for an approach at a right angle`,
        help: 'measure stopping time and distance again; correct the values, or put the device where it belongs before anybody works there',
      }
    }
  },
}
