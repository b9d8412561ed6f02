import { materialFactor, materialFactorRanges } from '../../signals/material-factor.ts'
import { isRefused } from '../../signals/refusals.ts'
import { checkouts, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'
import { advice, suggestFrom } from '../suggest.ts'

export const unknownTargetMaterial: Rule = {
  id: 'unknown-target-material',
  severity: 'warning',
  summary: 'A target is of a material without a factor, and none is given.',
  why: 'No distance is computed for the switch.',
  source: 'house rule',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { checkout, wired } of graph.made(checkouts)) {
      const values = wired[0]?.values
      const material = values?.placedText('targetMaterial')
      const principle = checkout.technology === 'capacitive' ? 'capacitive' : 'inductive'
      if (!values || !material || !isRefused(materialFactor(principle, material.value, values.number('materialFactor')))) continue
      if (!isNew(material.place)) continue
      const known = Object.keys(materialFactorRanges[principle])
      yield {
        message: `no factor is known for \`${material.value}\` before ${principle === 'capacitive' ? 'a capacitive' : 'an inductive'} switch`,
        place: material.place,
        help: advice(
          suggestFrom(known)(material.value),
          'material',
          `write one of ${known.join(', ')}, or give \`materialFactor\` from the data sheet`,
        ),
      }
    }
  },
}
