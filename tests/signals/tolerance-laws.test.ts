import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isComputed, type Result } from '../../src/law/law.ts'
import { coilVerdict } from '../../src/signals/coil.ts'
import { platinumLimits } from '../../src/signals/platinum-class.ts'
import { pressureSwitchBands } from '../../src/signals/pressure-switch.ts'
import { isRefused } from '../../src/signals/refusals.ts'
import { thermocoupleTolerance } from '../../src/signals/thermocouple-class.ts'
import { rootSumSquare, shareOfSpan, worstCase } from '../../src/signals/tolerance-stack.ts'
import { type Band, judge } from '../../src/signals/verdict.ts'
import { voltageWindow } from '../../src/signals/voltage-window.ts'
import { valueIn } from './expect-value.ts'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** What passes the narrow band passes the wide one. */
function holds(value: number, narrow: Band, wide: Band): void {
  if (judge(value, narrow) === 'pass') expect(judge(value, wide)).toBe('pass')
}
const bandOf = (low: Result, high: Result): Band => ({ low: valueIn(low), high: valueIn(high) })

describe('a wider tolerance never turns pass into fail', () => {
  test('classes of platinum, each inside the next', () => {
    const everywhere = [-200, 850] as const
    fc.assert(
      fc.property(within(-200, 850), within(-3, 3), fc.constantFrom(100, 1000), (temperatureC, offShare, iceResistanceOhm) => {
        const bands = (['AA', 'A', 'B', 'C'] as const).map((name) => {
          const limits = platinumLimits({ temperatureC, iceResistanceOhm }, name, everywhere)
          if (!('low' in limits) || !isComputed(limits.low) || !isComputed(limits.high)) return undefined
          return { low: limits.low.value, high: limits.high.value }
        })
        for (const [index, narrow] of bands.entries()) {
          const wide = bands[index + 1]
          if (!narrow || !wide) continue
          expect(narrow.low >= wide.low && narrow.high <= wide.high).toBe(true)
          holds((narrow.low + narrow.high) / 2 + (offShare * (narrow.high - narrow.low)) / 2, narrow, wide)
        }
      }),
    )
  })

  test.each(['J', 'K', 'T'] as const)('class 1 of type %s inside class 2', (type) => {
    fc.assert(
      fc.property(within(-40, 350), (temperatureC) => {
        const [one, two] = (['class 1', 'class 2'] as const).map((name) => {
          const tolerance = thermocoupleTolerance({ temperatureC }, type, name)
          return isRefused(tolerance) ? undefined : valueIn(tolerance)
        })
        if (one !== undefined && two !== undefined) expect(one).toBeLessThanOrEqual(two)
      }),
    )
  })

  test('the accuracy of a pressure switch, at both of its points', () => {
    fc.assert(
      fc.property(within(1, 10), within(0, 0.9), within(0, 5), within(0, 5), within(0, 12), (setBar, deadBandBar, narrow, more, value) => {
        const at = (tolerancePercent: number) => pressureSwitchBands({ setBar, deadBandBar, tolerancePercent, fullScaleBar: 10 })
        const [a, b] = [at(narrow), at(narrow + more)]
        holds(value, bandOf(a.tripLow, a.tripHigh), bandOf(b.tripLow, b.tripHigh))
        holds(value, bandOf(a.resetLow, a.resetHigh), bandOf(b.resetLow, b.resetHigh))
      }),
    )
  })

  test('the tolerance of a coil', () => {
    fc.assert(
      fc.property(within(1, 1000), within(1, 1000), within(0, 50), within(0, 50), (measured, expected, narrow, more) => {
        if (coilVerdict(measured, expected, narrow) === 'pass') expect(coilVerdict(measured, expected, narrow + more)).toBe('pass')
      }),
    )
  })

  test('the window of a load', () => {
    const share = (value: number) => ({ value, basis: 'data sheet' as const })
    fc.assert(
      fc.property(within(0.5, 1), within(1, 1.3), within(0, 0.4), within(0, 0.4), within(0, 40), (low, high, lower, higher, value) => {
        const narrow = voltageWindow({ low: share(low), high: share(high) }, 24)
        const wide = voltageWindow({ low: share(low - lower), high: share(high + higher) }, 24)
        holds(value, bandOf(narrow.low, narrow.high), bandOf(wide.low, wide.high))
      }),
    )
  })

  test('a share of a span', () => {
    fc.assert(
      fc.property(within(0, 5), within(0, 5), within(0.1, 100), (tolerancePercent, more, span) => {
        const at = (percent: number) => valueIn(shareOfSpan({ tolerancePercent: percent, span }))
        expect(at(tolerancePercent + more)).toBeGreaterThanOrEqual(at(tolerancePercent))
      }),
    )
  })

  test('of errors together the worst case is never less than their root, and one more never makes either less', () => {
    fc.assert(
      fc.property(fc.array(within(0, 5), { minLength: 1, maxLength: 6 }), within(0, 5), (errors, more) => {
        const [worst, root] = [valueIn(worstCase(errors)), valueIn(rootSumSquare(errors))]
        expect(root).toBeLessThanOrEqual(worst * (1 + 1e-12))
        expect(valueIn(worstCase([...errors, more]))).toBeGreaterThanOrEqual(worst)
        expect(valueIn(rootSumSquare([...errors, more]))).toBeGreaterThanOrEqual(root * (1 - 1e-12))
      }),
    )
  })
})
