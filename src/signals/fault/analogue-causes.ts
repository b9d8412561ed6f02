import { isComputed } from '../../law/law.ts'
import { loopState } from '../loop-current.ts'
import { platinumResistance } from '../platinum.ts'
import { thermocouples } from '../thermocouple.ts'
import type { ThermocoupleType } from '../thermocouple-coefficients.ts'
import type { Stretch } from './row.ts'

export type CauseId =
  | 'loop-open'
  | 'transmitter-reports-low'
  | 'loop-starved'
  | 'transmitter-reports-high'
  | 'transmitter-shorted'
  | 'loop-fed-twice'
  | 'element-open'
  | 'element-shorted'
  | 'thermocouple-shorted'
  | 'thermocouple-reversed'
  | 'thermocouple-type-wrong'

/** What may be wrong with an analogue signal; its words stand in `words/`. */
export interface Cause {
  id: CauseId
  suspected: Stretch
}

const causes = {
  'loop-open': 'signal-wire',
  'transmitter-reports-low': 'device',
  'loop-starved': 'supply',
  'transmitter-reports-high': 'device',
  'transmitter-shorted': 'signal-wire',
  'loop-fed-twice': 'terminal',
  'element-open': 'signal-wire',
  'element-shorted': 'signal-wire',
  'thermocouple-shorted': 'signal-wire',
  'thermocouple-reversed': 'terminal',
  'thermocouple-type-wrong': 'card',
} as const satisfies Record<CauseId, Stretch>

const named = (...ids: CauseId[]): Cause[] => ids.map((id) => ({ id, suspected: causes[id] }))

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

/** Likely causes of a resistance in Ω that no temperature from −200 to 850 °C has. */
export function platinumCauses(elementOhm: number, iceResistanceOhm: number): Cause[] {
  const [coldest, hottest] = [-200, 850].map((temperatureC) => platinumResistance({ temperatureC, iceResistanceOhm }))
  if (!coldest || !hottest || !isComputed(coldest) || !isComputed(hottest)) return []
  if (elementOhm > hottest.value) return named('element-open')
  return elementOhm < coldest.value ? named('element-shorted') : []
}

interface ThermocoupleReading {
  type: ThermocoupleType
  shownC: number
  /** As another instrument has it. */
  trueC: number
  terminalC: number
  /** How far a reading may be off and still be right, in K. */
  toleranceK: number
}

/**
 * Likely causes of a temperature that a thermocouple shows and the process does not have: what a short circuit of
 * the cable, swapped leads and another type would show is computed, and compared with what is shown.
 */
export function thermocoupleCauses({ type, shownC, trueC, terminalC, toleranceK }: ThermocoupleReading): Cause[] {
  const near = (temperatureC: number | undefined) => temperatureC !== undefined && Math.abs(shownC - temperatureC) <= toleranceK
  if (near(trueC)) return []
  const shownBy = (couple: ThermocoupleType, card: ThermocoupleType, sign: 1 | -1) => {
    const voltage = thermocouples[couple].terminalVoltage({ temperatureC: trueC, terminalC })
    if (!isComputed(voltage)) return undefined
    const shown = thermocouples[card].temperature({ terminalMv: sign * voltage.value, terminalC })
    return isComputed(shown) ? shown.value : undefined
  }
  const others = (['J', 'K', 'T'] as const).filter((other) => other !== type)
  return [
    ...(near(terminalC) ? named('thermocouple-shorted') : []),
    ...(near(shownBy(type, type, -1)) ? named('thermocouple-reversed') : []),
    ...(others.some((other) => near(shownBy(type, other, 1)) || near(shownBy(other, type, 1))) ? named('thermocouple-type-wrong') : []),
  ]
}
