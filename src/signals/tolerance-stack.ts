import type { Computed, Result } from '../law/law.ts'
import { type Given, law } from './law.ts'

/** Share of a span, in the unit of the span: an error in %, or the class of a gauge (EN 837-1, from memory). */
export const shareOfSpan = law({
  formula: 'e = e%·s/100',
  unit: '',
  inputs: ['tolerancePercent', 'span'],
  value: ({ tolerancePercent, span }) => (tolerancePercent * span) / 100,
})

type Tolerance = NonNullable<Given<'tolerancePercent'>['tolerancePercent']>

const each = law({ formula: 'e', unit: '%', inputs: ['tolerancePercent'], value: ({ tolerancePercent }) => tolerancePercent })

/** All errors of a chain at their worst, in %: the limit to pass. One that is missing leaves it not computed. */
export function worstCase(tolerances: readonly (Tolerance | undefined)[]): Result {
  return stack(tolerances, 'e = Σe', (values) => values.reduce((sum, value) => sum + value, 0))
}

/** The root of the sum of squares, in %: how large the error usually is. For information only. */
export function rootSumSquare(tolerances: readonly (Tolerance | undefined)[]): Result {
  return stack(tolerances, 'e = √(Σe²)', (values) => Math.hypot(...values))
}

function stack(tolerances: readonly (Tolerance | undefined)[], formula: string, value: (values: number[]) => number): Result {
  if (tolerances.length === 0) return { notComputed: ['tolerance'] }
  const single = tolerances.map((tolerancePercent) => each({ tolerancePercent }))
  const wrong = single.find((result) => !('value' in result))
  if (wrong) return wrong
  const computed = single.filter((result): result is Computed => 'value' in result)
  return { value: value(computed.map((it) => it.value)), unit: '%', formula, inputs: computed.flatMap(({ inputs }) => inputs) }
}
