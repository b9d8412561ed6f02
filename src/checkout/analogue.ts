import type { Result } from '../law/law.ts'
import { hydrostaticPressure, standardGravity } from '../signals/level.ts'
import { largestLoop, loopResistance, transmitterVoltage } from '../signals/loop-budget.ts'
import { loopLimits } from '../signals/loop-current.ts'
import { analogueSignals, countsOfSignal, signalOfValue } from '../signals/scaling.ts'
import { rootSumSquare, shareOfSpan, worstCase } from '../signals/tolerance-stack.ts'
import { unitOf } from '../signals/unit.ts'
import { type Expectation, expected, isValue, restsOn, stated, together } from './expectation.ts'
import { signalName } from './switched.ts'
import { ohmPerKm, type Wired } from './wiring.ts'

const points = [
  ['range-low', 0],
  ['range-middle', 0.5],
  ['range-high', 1],
] as const

/** The range of the I/O list in three points. Empty where the list has none. */
export function pointsOfRange({ signal }: Wired) {
  const [low, high, unit] = [signal?.low?.value, signal?.high?.value, signal?.unit?.value ?? '']
  return low === undefined || high === undefined ? [] : points.map(([state, share]) => ({ state, value: low + share * (high - low), unit }))
}

/** What an analogue signal reads at three points of its range, and what the loop leaves for the transmitter. */
export function analogueExpectations(wired: Wired): Expectation[] {
  const { values, ofCard, signal } = wired
  const kind = values.choice('signal') ?? ofCard.choice('signal')
  const frame = { measured: 'analogue-signal', ...signalName(wired), point: 'terminal', state: 'range-low' } as const
  if (!kind) return [{ ...stated(frame), notComputed: ['signal'] }]
  const { unit, ends } = analogueSignals[kind]
  const at = pointsOfRange(wired)
  if (at.length === 0) return [{ ...stated({ ...frame, unit }), notComputed: ['low', 'high'] }]
  const range = { rangeLow: signal?.low?.value, rangeHigh: signal?.high?.value, ...ends }
  const error = shareOfSpan({ tolerancePercent: values.number('tolerancePercent'), span: ends.signalHigh - ends.signalLow })
  const readings = at.map(({ state, value, unit: ofRange }) => {
    const result = signalOfValue({ value, ...range })
    return withTolerance(expected({ ...frame, state, at: { value, unit: ofRange }, unit }, result), error)
  })
  return [
    ...readings,
    ...headPressures(wired),
    ...countsAt(wired, readings, ends),
    ...(unit === 'mA' ? loopExpectations(wired, kind === '4-20 mA') : []),
  ]
}

/** Of a level by the pressure at the bottom: what a hand pump must give for each point of the range. Nothing without a density. */
function headPressures(wired: Wired): Expectation[] {
  const densityKgPerM3 = wired.values.number('densityKgPerM3')
  if (!densityKgPerM3) return []
  return pointsOfRange(wired).flatMap(({ state, value, unit }): Expectation[] => {
    const height = unitOf(unit)
    if (height?.dimension !== 'length') return []
    const liquidM = value * height.factor
    const frame = { measured: 'head-pressure', ...signalName(wired), point: 'device', state, at: { value, unit }, unit: 'kPa' } as const
    return [expected(frame, hydrostaticPressure({ densityKgPerM3, gravityMPerS2: standardGravity, liquidM }))]
  })
}

export function withTolerance(it: Expectation, error: Result): Expectation {
  if (it.value === undefined) return it
  if ('impossible' in error) return { ...it, impossible: { why: error.impossible, of: ['tolerancePercent'] } }
  if (!isValue(error)) return { ...it, notComputed: ['tolerancePercent'] }
  return { ...it, low: it.value - error.value, high: it.value + error.value, restsOn: together(it.restsOn, restsOn(error.inputs)) }
}

/** Raw counts at the address: what passes has both errors at their worst, what is usual the root of their squares. */
function countsAt({ values, ofCard }: Wired, readings: readonly Expectation[], ends: { signalLow: number; signalHigh: number }): Expectation[] {
  const counts = { countsLow: ofCard.number('countsLow'), countsHigh: ofCard.number('countsHigh') }
  const [ofDevice, card] = [values.number('tolerancePercent'), ofCard.number('tolerancePercent')]
  return readings.flatMap((reading): Expectation[] => {
    if (reading.value === undefined) return []
    const { state, at, signal } = reading
    const frame = { measured: 'counts' as const, point: 'address' as const, state, ...(at ? { at } : {}), ...(signal ? { signal } : {}), unit: '' }
    const found = expected(frame, countsOfSignal({ signal: reading.value, ...ends, ...counts }))
    if (found.value === undefined || !counts.countsLow || !counts.countsHigh) return [found]
    if (!ofDevice || !card) return [{ ...found, notComputed: ['tolerancePercent'] }]
    const span = Math.abs(counts.countsHigh.value - counts.countsLow.value)
    const [worst, usual] = [worstCase([ofDevice, card]), rootSumSquare([ofDevice, card])].map((sum) =>
      isValue(sum) ? shareOfSpan({ tolerancePercent: { ...ofDevice, value: sum.value }, span }) : sum,
    )
    if (!worst || !usual) return [found]
    const value = found.value
    return [{ ...withTolerance(found, worst), ...(isValue(usual) ? { usual: { low: value - usual.value, high: value + usual.value } } : {}) }]
  })
}

function loopExpectations(wired: Wired, liveZero: boolean): Expectation[] {
  const { values, ofCard, supplyV } = wired
  const loop = loopResistance({ cardOhm: ofCard.number('cardOhm'), lengthM: values.number('cableLengthM'), resistanceOhmPerKm: ohmPerKm(wired) })
  const frame = { measured: 'transmitter-voltage', ...signalName(wired), point: 'device', state: 'always', unit: 'V' } as const
  const currentMa = values.number('highestCurrentMa')
  const least = values.number('transmitterV')
  const budget = largestLoop({ supplyV, transmitterV: least, highestCurrentMa: currentMa })
  const atDevice = isValue(loop) ? transmitterVoltage({ supplyV, currentMa, loadOhm: loop.value }) : loop
  const left = expected(frame, isValue(loop) && !isValue(budget) ? budget : atDevice, () => (least ? { low: least.value } : {}))
  const naming = left.notComputed?.map((name) => (name === 'current' ? 'highestCurrentMa' : name))
  const [low, high] = [
    values.number('failureLowToMa') ?? loopLimits.failureLowToMa,
    values.number('failureHighFromMa') ?? loopLimits.failureHighFromMa,
  ]
  const failure = { measured: 'analogue-signal', ...signalName(wired), point: 'terminal', unit: 'mA' } as const
  return [
    naming ? { ...left, notComputed: naming } : left,
    ...(liveZero
      ? [stated({ ...failure, state: 'failure-low', high: low.value }, low), stated({ ...failure, state: 'failure-high', low: high.value }, high)]
      : []),
  ]
}
