import type { CheckoutEntry, CheckoutNumber } from '../../model/checkout-data.ts'
import { type ConductorClass, conductorOhmPerKm, conductorSizesMm2 } from '../../signals/cable.ts'
import { figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const unknownCrossSection: Rule = {
  id: 'unknown-cross-section',
  severity: 'warning',
  summary: 'A cross-section is none of the sizes whose resistance is known.',
  why: 'What the cable drops is not computed, and readings are judged without it.',
  source: 'IEC 60228; below 0.5 mm² its national equivalents',

  *check({ checkout }) {
    const all = [...(checkout?.parts ?? []), ...(checkout?.devices ?? [])].flatMap((entry) => cableOf(entry) ?? [])
    const unknown = all.filter(({ area, conductor }) => !conductorOhmPerKm(area.value, conductor))
    // Where a cable of the machine is of such a size, many devices have it: it is said once.
    for (const [first, ...others] of Map.groupBy(unknown, ({ area, conductor }) => `${area.value} ${conductor}`).values()) {
      if (!first) continue
      const { area, conductor } = first
      const sizes = conductorSizesMm2(conductor)
      const near = [sizes.findLast((size) => size < area.value), sizes.find((size) => size > area.value)].filter((it) => it !== undefined)
      yield {
        message: `\`cableAreaMm2: ${figure(area.value)}\` is no size of a ${conductor} conductor`,
        place: area.place,
        ...(others.length > 0 ? { note: `it stands ${others.length} more ${others.length === 1 ? 'time' : 'times'} in the file` } : {}),
        help: `the nearest ${near.length > 1 ? 'sizes are' : 'size is'} ${near.map((size) => `${size} mm²`).join(' and ')}`,
      }
    }
  },
}

function cableOf({ numbers, choices }: CheckoutEntry): { area: CheckoutNumber; conductor: ConductorClass } | undefined {
  const area = numbers.cableAreaMm2
  return area && { area, conductor: choices.conductor?.value ?? 'class 5' }
}
