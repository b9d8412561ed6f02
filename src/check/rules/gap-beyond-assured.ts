import { materialFactor } from '../../signals/material-factor.ts'
import { distanceFactors, mountedGapVerdict, proximityLimits } from '../../signals/proximity.ts'
import { isRefused } from '../../signals/refusals.ts'
import { checkouts, figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const gapBeyondAssured: Rule = {
  id: 'gap-beyond-assured',
  severity: 'error',
  summary: 'A proximity switch is mounted further from its target than it is sure to see it.',
  why: 'It works on the bench and fails on the machine: when it is warm, when the supply is low, or after an exchange.',
  source: 'IEC 60947-5-2, assured operating distance',

  *check(_, graph) {
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      const { technology } = checkout
      const values = wired[0]?.values
      const gap = values?.placed('gapMm')
      const rated = values?.placed('ratedDistanceMm')
      if ((technology !== 'inductive' && technology !== 'capacitive') || !values || !gap || !rated) continue
      const [material, given] = [values.text('targetMaterial'), values.number('materialFactor')]
      const factor = material === undefined && given === undefined ? undefined : materialFactor(technology, material ?? '', given)
      if (!factor || isRefused(factor)) continue
      // Of a range of factors the high end: only what no device of the kind is sure to see is wrong.
      const most = factor.range ? { ...factor.factor, value: factor.range[1] } : factor.factor
      const { mustBeOnTo } = proximityLimits({ ratedDistanceMm: rated.value, materialFactor: most }, distanceFactors[technology])
      if (!('value' in mustBeOnTo) || mountedGapVerdict(gap.value, mustBeOnTo.value) !== 'fail') continue
      yield {
        message: `\`${device.tag.value}\` is mounted at ${figure(gap.value)} mm, and is sure to see its target up to ${figure(mustBeOnTo.value)} mm`,
        place: gap.place,
        related: [{ label: 'the rated distance', place: rated.place }],
        note: `${mustBeOnTo.formula}: ${mustBeOnTo.inputs.map(({ letter, value, unit }) => `${letter} = ${figure(value)}${unit === '1' ? '' : ` ${unit}`}`).join(', ')}`,
        help: 'set the switch nearer, choose one with a longer distance, or correct the gap',
      }
    }
  },
}
