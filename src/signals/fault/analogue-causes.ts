import { isComputed, type Result } from '../../law/law.ts'
import type { Given } from '../law.ts'
import { loopState } from '../loop-current.ts'
import { platinumResistance } from '../platinum.ts'
import { thermistorResistance } from '../thermistor.ts'
import { type Cause, named } from './cause.ts'

/** Below it a loop carries nothing; above the second no transmitter limits it any more. In mA; common practice. */
export const [noCurrentMa, limitedToMa] = [0.1, 24]

/**
 * Likely causes of a current in mA on a 4–20 mA loop, the likeliest first; none where it measures. `wanted`: what it
 * should be, from the process; with it a loop that stays below is found too. Common practice.
 */
export function loopCauses(currentMa: number, wanted?: { currentMa: number; toleranceMa: number }): Cause[] {
  const state = loopState(currentMa)
  if (state === undefined) return []
  if (state === 'failure low') return currentMa < noCurrentMa ? named('loop-open') : named('transmitter-reports-low', 'loop-starved')
  if (state === 'failure high') {
    return currentMa > limitedToMa
      ? named('transmitter-shorted', 'loop-fed-twice')
      : named('transmitter-reports-high', 'transmitter-shorted', 'loop-fed-twice')
  }
  return wanted && currentMa < wanted.currentMa - wanted.toleranceMa ? named('loop-starved') : []
}

interface VoltageSignal {
  lowV: number
  highV: number
  /** What it should be, from the process. */
  wanted?: { voltageV: number; toleranceV: number }
}

/** Share of the span that a transmitter may overshoot; share of its upper end from which only a supply drives it. Common practice. */
const [overshoot, beyondTransmitter] = [0.05, 1.5]
/** What an open input reads at most, as a share of the span. Common practice. */
const openShare = 0.02

/**
 * Likely causes of a voltage in V on a signal such as 0–10 V. A broken wire reads as zero: where the signal begins at
 * zero, only what the process says tells them apart. Common practice.
 */
export function voltageCauses(voltageV: number, { lowV, highV, wanted }: VoltageSignal): Cause[] {
  if (!Number.isFinite(voltageV)) return []
  const span = highV - lowV
  const [isNothing, isNegative] = [Math.abs(voltageV) <= openShare * span, voltageV < -overshoot * span]
  if (isNegative) return named('voltage-reversed')
  if (voltageV > highV * beyondTransmitter) return named('voltage-touches-supply', 'voltage-common-open')
  if (voltageV > highV + overshoot * span) return named('voltage-common-open', 'voltage-touches-supply')
  if (isNothing && (lowV > 0 || (wanted && wanted.voltageV > wanted.toleranceV + openShare * span))) return named('voltage-open')
  if (!wanted || Math.abs(voltageV - wanted.voltageV) <= wanted.toleranceV) return []
  return voltageV < wanted.voltageV ? named('voltage-loaded', 'voltage-offset') : named('voltage-offset')
}

/** Likely causes of a resistance in Ω that no temperature from −200 to 850 °C has. */
export function platinumCauses(elementOhm: number, iceResistanceOhm: number): Cause[] {
  return beyond(elementOhm, [-200, 850], (temperatureC) => platinumResistance({ temperatureC, iceResistanceOhm }))
}

/** Temperatures between which a thermistor is used, in °C. Common practice. */
const thermistorRangeC = [-40, 200] as const

/** Likely causes of a resistance in Ω that no temperature at which a thermistor is used has. */
export function thermistorCauses(elementOhm: number, curve: Given<'referenceOhm' | 'referenceC' | 'betaK'>): Cause[] {
  return beyond(elementOhm, thermistorRangeC, (temperatureC) => thermistorResistance({ temperatureC, ...curve }))
}

function beyond(ohm: number, [fromC, toC]: readonly [number, number], resistance: (temperatureC: number) => Result): Cause[] {
  const [first, second] = [resistance(fromC), resistance(toC)]
  if (!isComputed(first) || !isComputed(second)) return []
  if (ohm > Math.max(first.value, second.value)) return named('element-open')
  return ohm < Math.min(first.value, second.value) ? named('element-shorted') : []
}
