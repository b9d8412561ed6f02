import type { Expectation } from '../../checkout/expectation.ts'
import { unitOf } from '../../signals/unit.ts'
import type { Context } from '../context.ts'
import type { Expected } from '../meter/meter-sheet.ts'
import { basisOfRest, expectationName } from './expectation-rows.ts'

/** What the kinds of sheets ask for by themselves, and what is looked at and not measured. */
const askedAnyway: ReadonlySet<Expectation['measured']> = new Set([
  'signal-bit',
  'terminal-voltage',
  'supply',
  'switching-rate',
  'clear-in-front',
  'clear-beside',
  'clear-opposite',
  'clear-behind',
  'clear-around',
])

/** Expectations with a limit that a meter or a gauge can be read against. */
export function expectedOf(context: Context, expectations: readonly Expectation[]): Expected[] {
  return expectations.flatMap((it) => {
    const { point, low, high, unit, measured, meter } = it
    const isAsked = meter !== undefined || askedAnyway.has(measured) || it.state === 'failure-low' || it.state === 'failure-high'
    if (isAsked || (low === undefined && high === undefined) || !unitOf(unit)) return []
    const band = { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) }
    return [{ at: point, ...expectationName(context, it), band, unit, basis: basisOfRest(it) }]
  })
}
