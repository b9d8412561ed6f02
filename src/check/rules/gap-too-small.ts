import { minimumGapMm } from '../../hazard/minimum-gap.ts'
import type { Rule } from '../rule.ts'

export const gapTooSmall: Rule = {
  id: 'gap-too-small',
  severity: 'error',
  summary: 'A gap that is to keep people from being crushed is too small for the part of the body.',
  why: 'The measure that the risk assessment counts on does not work.',
  source: 'ISO 13854, table 1. The risk assessment and a standard for the kind of machine come first',
  guards: 'people',

  *check({ hazards = [] }) {
    for (const { id, gap } of hazards) {
      if (!gap || gap.mm.value >= minimumGapMm[gap.part]) continue
      yield {
        message: `the gap of ${gap.mm.value} mm at hazard \`${id.value}\` can crush a ${gap.part === 'toes' ? 'toe' : gap.part}`,
        place: gap.mm.place,
        related: [{ label: 'the hazard', place: id.place }],
        note: `a ${gap.part === 'toes' ? 'toe' : gap.part} needs at least ${minimumGapMm[gap.part]} mm`,
        help: 'measure it again; where it is right, take `gap` out and guard the place in another way',
      }
    }
  },
}
