import { isComputed } from '../../law/law.ts'
import { thermocouples } from '../thermocouple.ts'
import type { ThermocoupleType } from '../thermocouple-coefficients.ts'
import { type Cause, named } from './cause.ts'

interface ThermocoupleReading {
  type: ThermocoupleType
  shownC: number
  /** As another instrument has it. */
  trueC: number
  terminalC: number
  /** How far a reading may be off and still be right, in K. */
  toleranceK: number
  /** A meter in mV knows nothing of the type that the card is set to. */
  readBy?: 'card' | 'meter'
}

/** Most resistance in Ω that a couple with its cable has. Common practice. */
export const mostCoupleOhm = 1000

/** Likely causes of the resistance of a couple with its cable, in Ω. */
export const coupleCauses = (coupleOhm: number): Cause[] => (coupleOhm > mostCoupleOhm ? named('thermocouple-open') : [])

/** Likely causes of a voltage in mV that no temperature of the type gives: far below the range the leads are swapped. */
export function thermovoltageCauses(type: ThermocoupleType, terminalMv: number, terminalC: number): Cause[] {
  const isRight = isComputed(thermocouples[type].temperature({ terminalMv, terminalC }))
  return !isRight && terminalMv < 0 ? named('thermocouple-reversed') : []
}

/**
 * Likely causes of a temperature that a thermocouple shows and the process does not have: what a short circuit of
 * the cable, swapped leads and another type would show is computed, and compared with what is shown. Cable of another
 * metal loses a part of the difference: it shows something between the terminals and the process.
 */
export function thermocoupleCauses({ type, shownC, trueC, terminalC, toleranceK, readBy = 'card' }: ThermocoupleReading): Cause[] {
  const near = (temperatureC: number | undefined) => temperatureC !== undefined && Math.abs(shownC - temperatureC) <= toleranceK
  if (near(trueC)) return []
  const shownBy = (couple: ThermocoupleType, card: ThermocoupleType, sign: 1 | -1) => {
    const voltage = thermocouples[couple].terminalVoltage({ temperatureC: trueC, terminalC })
    if (!isComputed(voltage)) return undefined
    const shown = thermocouples[card].temperature({ terminalMv: sign * voltage.value, terminalC })
    return isComputed(shown) ? shown.value : undefined
  }
  const others = (['J', 'K', 'T'] as const).filter((other) => other !== type)
  const found = [
    ...(near(terminalC) ? named('thermocouple-shorted') : []),
    ...(near(shownBy(type, type, -1)) ? named('thermocouple-reversed') : []),
    ...(readBy === 'card' && others.some((other) => near(shownBy(type, other, 1)) || near(shownBy(other, type, 1)))
      ? named('thermocouple-type-wrong')
      : []),
    ...(readBy === 'meter' && others.some((other) => near(shownBy(other, type, 1))) ? named('thermocouple-of-other-type') : []),
  ]
  const isBetween = Math.min(terminalC, trueC) < shownC && shownC < Math.max(terminalC, trueC)
  return isBetween ? [...found, ...named('thermocouple-cable-wrong')] : found
}
